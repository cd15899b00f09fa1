/** One giver in the flow. */
interface Node {
  readonly amount: number;
  readonly allowed: readonly number[];
  /** Sent to each line. */
  readonly sent: Map<number, number>;
}

/** The largest flow from gifts to lines that hold only so much, made larger gift by gift along ways that rearrange earlier ones. */
export class Flow {
  private readonly nodes: Node[] = [];
  private readonly holds: readonly number[];
  private readonly filled: number[];

  /** What each line holds, whole numbers. */
  constructor(holds: readonly number[]) {
    this.holds = holds;
    this.filled = holds.map(() => 0);
  }

  /** Adds a gift that may go to these lines and sends as much of it as can be; its number. */
  add(amount: number, allowed: readonly number[]): number {
    const number = this.nodes.length;
    this.nodes.push({ amount, allowed, sent: new Map() });
    while (this.left(number) > 0 && this.widen(number));
    return number;
  }

  used(number: number): number {
    return [...(this.nodes[number]?.sent.values() ?? [])].reduce((sum, part) => sum + part, 0);
  }

  left(number: number): number {
    return (this.nodes[number]?.amount ?? 0) - this.used(number);
  }

  between(number: number, line: number): number {
    return this.nodes[number]?.sent.get(line) ?? 0;
  }

  total(): number {
    return this.filled.reduce((sum, part) => sum + part, 0);
  }

  /** Lines that could be freed for this gift by moving others, and the gifts that would have to move, itself among them. */
  reached(number: number): { readonly lines: readonly number[]; readonly gifts: readonly number[] } {
    const { cameFrom, gifts } = this.search(number);
    return { lines: [...cameFrom.keys()], gifts: [...gifts.keys()] };
  }

  /** Breadth first: from a gift to the lines it may pay, from a line to the gifts that pay it now. */
  private search(from: number) {
    const cameFrom = new Map<number, number>();
    const gifts = new Map<number, number | undefined>([[from, undefined]]);
    const queue = [from];
    let open: number | undefined;
    for (let gift = queue.shift(); gift !== undefined && open === undefined; gift = queue.shift()) {
      for (const line of this.nodes[gift]?.allowed ?? []) {
        if (cameFrom.has(line)) continue;
        cameFrom.set(line, gift);
        if ((this.filled[line] ?? 0) < (this.holds[line] ?? 0)) {
          open = line;
          break;
        }
        this.nodes.forEach(({ sent }, other) => {
          if (gifts.has(other) || (sent.get(line) ?? 0) === 0) return;
          gifts.set(other, line);
          queue.push(other);
        });
      }
    }
    return { cameFrom, gifts, open };
  }

  /** Sends more along one such way, as much as its narrowest place lets through; false where there is none. */
  private widen(from: number): boolean {
    const { cameFrom, gifts, open } = this.search(from);
    if (open === undefined) return false;
    const way: { readonly gift: number; readonly to: number; readonly instead: number | undefined }[] = [];
    for (let line: number | undefined = open; line !== undefined; ) {
      const gift = cameFrom.get(line) ?? from;
      const instead = gifts.get(gift);
      way.push({ gift, to: line, instead });
      line = instead;
    }
    const room = (this.holds[open] ?? 0) - (this.filled[open] ?? 0);
    const moved = way.map(({ gift, instead }) =>
      instead === undefined ? this.left(gift) : this.between(gift, instead),
    );
    const more = Math.min(room, ...moved);
    for (const { gift, to, instead } of way) {
      const sent = this.nodes[gift]?.sent;
      sent?.set(to, this.between(gift, to) + more);
      if (instead !== undefined) sent?.set(instead, this.between(gift, instead) - more);
    }
    this.filled[open] = (this.filled[open] ?? 0) + more;
    return more > 0;
  }
}
