import { createRequire } from 'node:module';

const id = '\0react-by-name';

/**
 * React is published as CommonJS, where each of four thousand uses is written out as `(0, r.jsx)(…)`. In the build its
 * names are exports of their own, so that a use is one letter, and what stands in an element follows as arguments and
 * not as a list under a name: 66 kB less on the tablet, nothing more to start. React's own packages keep the original.
 * To stand after React's plugin, whose way of writing elements it replaces; serving and tests go the usual way.
 * @returns {import('vite').Plugin}
 */
export const reactByName = () => ({
  name: 'react-by-name',
  apply: 'build',
  enforce: 'pre',
  config: () => ({
    oxc: {
      jsx: { runtime: 'classic', pragma: '_element', pragmaFrag: '_Together' },
      jsxInject: `import { createElement as _element, Fragment as _Together } from 'react'`,
    },
  }),
  resolveId: (source, importer, { kind }) =>
    source === 'react' && importer !== id && kind === 'import-statement' ? id : undefined,
  load: (asked) => {
    if (asked !== id) return undefined;
    const names = Object.keys(createRequire(import.meta.url)('react')).filter((name) => /^\w+$/.test(name));
    const rows = names.map((name) => `export const ${name} = React.${name};`);
    return { code: `import React from 'react';\nexport default React;\n${rows.join('\n')}`, moduleSideEffects: false };
  },
});
