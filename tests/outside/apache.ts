import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { createHash, X509Certificate } from 'node:crypto';
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { IncomingHttpHeaders } from 'node:http';
import { request } from 'node:https';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { built } from '../browser/server';

/** The one configuration the README gives, used as it stands. */
const configuration = 'tests/files/apache.conf';
/** What its first lines tell a person to type. */
const modules = /a2enmod (.+) && a2dissite/.exec(readFileSync(configuration, 'utf8'))?.[1]?.split(' ') ?? [];

export const anna = { name: 'anna', password: 'a long one: größer' };

export interface Answered {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** Debian's apache2 on loopback, serving the built app and its folder. */
export interface Apache {
  /** Address of the app, with a slash at the end. */
  readonly url: string;
  readonly port: number;
  /** Address without https. */
  readonly plain: string;
  /** The app as served: a copy of the build, which a test may add to. */
  readonly app: string;
  /** What the server keeps of the folder, on its disk. */
  readonly kept: string;
  /** For Chromium: trust this server's certificate and no other. */
  readonly trust: string;
  ask(
    path: string,
    asked?: { method?: string; as?: typeof anna; headers?: Record<string, string>; body?: string },
  ): Promise<Answered>;
  start(): Promise<void>;
  /** At once, with all that is under way. */
  end(): Promise<void>;
  /** What the server was asked since it first started: method, path and status. */
  asked(): readonly string[];
  close(): Promise<void>;
}

/** `room`: how many kB the folder may hold, on a file system of its own. */
export async function startApache({ room }: { room?: number } = {}): Promise<Apache> {
  if (!existsSync(join(built, 'index.html')))
    throw new Error(`There is no built app in ${built}: run npm run build first.`);
  const home = mkdtempSync(join(tmpdir(), 'patina-round-apache-'));
  // The server's own processes run under a name of their own and must come through to the app.
  chmodSync(home, 0o755);
  const at = (...names: string[]) => join(home, ...names);
  for (const name of ['run', 'lock', 'log', 'kept']) mkdirSync(at(name));
  cpSync(built, at('app'), { recursive: true });
  if (room) execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${room}k`, 'tmpfs', at('kept')]);

  const port = await freePort();
  const plainPort = await freePort();
  cpSync('/etc/apache2', at('conf'), { recursive: true, verbatimSymlinks: true });
  writeFileSync(at('conf', 'ports.conf'), `Listen 127.0.0.1:${port}\nListen 127.0.0.1:${plainPort}\n`);
  cpSync(configuration, at('conf', 'sites-available', 'patina-round.conf'));
  const env = {
    ...process.env,
    APACHE_CONFDIR: at('conf'),
    APACHE_RUN_DIR: at('run'),
    APACHE_LOCK_DIR: at('lock'),
    APACHE_LOG_DIR: at('log'),
    APACHE_PID_FILE: at('run', 'pid'),
    APACHE_RUN_USER: 'www-data',
    APACHE_RUN_GROUP: 'www-data',
  };
  const run = (program: string, ...args: string[]) => execFileSync(program, args, { env, stdio: 'pipe' });
  run('a2enmod', '-q', ...modules);
  run('a2dissite', '-q', '000-default');
  run('a2ensite', '-q', 'patina-round');
  run('htpasswd', '-c', '-B', '-b', at('passwords'), anna.name, anna.password);
  run(
    'openssl',
    ...'req -x509 -newkey ec -pkeyopt ec_paramgen_curve:P-256 -nodes -days 2 -subj /CN=localhost'.split(' '),
    ...['-addext', 'subjectAltName=DNS:localhost', '-keyout', at('key.pem'), '-out', at('certificate.pem')],
  );
  run('chown', '-R', 'www-data', at('kept'), at('lock'), at('run'));
  const certificate = readFileSync(at('certificate.pem'));
  const key = new X509Certificate(certificate).publicKey.export({ type: 'spki', format: 'der' });

  const values = {
    NAME: 'localhost',
    APP: at('app'),
    FOLDER: at('kept'),
    PASSWORDS: at('passwords'),
    CERTIFICATE: at('certificate.pem'),
    CERTIFICATE_KEY: at('key.pem'),
    PORT: String(port),
    PLAIN_PORT: String(plainPort),
  };
  const defined = Object.entries(values).flatMap(([name, value]) => ['-C', `Define ${name} ${value}`]);
  const told = ['-d', at('conf'), '-f', 'apache2.conf', '-D', 'FOREGROUND', '-C', 'ServerName localhost', ...defined];
  let running: ChildProcess | undefined;
  const endAll = () => {
    try {
      if (running?.pid) process.kill(-running.pid, 'SIGKILL');
    } catch {
      // Already gone.
    }
  };
  process.once('exit', endAll);

  const apache: Apache = {
    url: `https://localhost:${port}/`,
    port,
    plain: `http://localhost:${plainPort}/`,
    app: at('app'),
    kept: at('kept'),
    trust: `--ignore-certificate-errors-spki-list=${createHash('sha256').update(key).digest('base64')}`,
    ask: (path, { method = 'GET', as, headers = {}, body } = {}) =>
      new Promise((resolve, reject) => {
        const auth = as ? `${as.name}:${as.password}` : undefined;
        const asking = request(
          { host: 'localhost', port, path, method, headers, auth, ca: certificate, agent: false },
          (answer) => {
            let said = '';
            answer.setEncoding('utf8').on('data', (piece) => {
              said += piece;
            });
            answer.on('end', () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body: said }));
          },
        );
        asking.once('error', reject).end(body);
      }),
    async start() {
      await apache.end();
      running = spawn('apache2', told, { env, detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
      let said = '';
      running.stderr!.on('data', (piece) => {
        said += piece;
      });
      for (let tries = 0; tries < 300; tries++) {
        if (running.exitCode !== null) throw new Error(`apache2 ended at once. It said:\n${said}`);
        if (
          await apache.ask('/').then(
            ({ status }) => status === 200,
            () => false,
          )
        )
          return;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      throw new Error(`apache2 did not answer within half a minute. It said:\n${said}`);
    },
    async end() {
      const one = running;
      if (!one || (one.exitCode ?? one.signalCode) !== null) return;
      const ended = new Promise<void>((resolve) => one.once('exit', () => resolve()));
      endAll();
      await ended;
      rmSync(at('run', 'pid'), { force: true });
    },
    asked: () =>
      readFileSync(at('log', 'other_vhosts_access.log'), 'utf8')
        .split('\n')
        .flatMap((line) => {
          const [, method, path, status] = /"([A-Z]+) (\S+) HTTP[^"]*" (\d+)/.exec(line) ?? [];
          return method ? [`${method} ${path} ${status}`] : [];
        }),
    async close() {
      await apache.end();
      process.removeListener('exit', endAll);
      if (room) execFileSync('umount', [at('kept')]);
      rmSync(home, { recursive: true, force: true });
    },
  };
  await apache.start();
  return apache;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === 'object' && address ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}
