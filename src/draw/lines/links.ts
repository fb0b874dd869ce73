import { Reals, Wholes, real, whole } from './arrays.ts';
import { hashOf } from './hash.ts';

/** Straight links between two nodes that nothing crosses, one for each two nodes, in the order of their first coming. */
export class Links {
  readonly from = new Wholes();
  readonly to = new Wholes();
  /** Kinds of the lines that lie here, added up. */
  readonly kinds = new Wholes();
  /** x y z of the middle of the nearest of those lines, in view coordinates. */
  readonly middles = new Reals();
  /** The first link of each hash of two nodes, and the next with the same hash, or −1. */
  private buckets = new Int32Array(1024).fill(-1);
  private readonly next = new Wholes();

  get count(): number {
    return this.from.count;
  }

  /** Adds a link, or its kinds to the one between the same nodes; of two the middle nearer to the eye stays, the later at a tie. */
  put(from: number, to: number, kinds: number, x: number, y: number, z: number): void {
    const known = this.between(from, to);
    if (known < 0) {
      this.add(from, to, kinds, x, y, z);
      return;
    }
    this.kinds.values[known] = whole(this.kinds.values, known) | kinds;
    if (real(this.middles.values, 3 * known + 2) > z) return;
    this.middles.values[3 * known] = x;
    this.middles.values[3 * known + 1] = y;
    this.middles.values[3 * known + 2] = z;
  }

  private between(from: number, to: number): number {
    let link = whole(this.buckets, hashOf(from, to, this.buckets.length));
    while (link >= 0 && (whole(this.from.values, link) !== from || whole(this.to.values, link) !== to)) link = whole(this.next.values, link);
    return link;
  }

  private add(from: number, to: number, kinds: number, x: number, y: number, z: number): void {
    this.from.push(from);
    this.to.push(to);
    this.kinds.push(kinds);
    this.middles.push(x);
    this.middles.push(y);
    this.middles.push(z);
    this.next.push(-1);
    if (2 * this.count >= this.buckets.length) this.spreadOut();
    else this.chain(this.count - 1);
  }

  private chain(link: number): void {
    const bucket = hashOf(whole(this.from.values, link), whole(this.to.values, link), this.buckets.length);
    this.next.values[link] = whole(this.buckets, bucket);
    this.buckets[bucket] = link;
  }

  private spreadOut(): void {
    this.buckets = new Int32Array(2 * this.buckets.length).fill(-1);
    for (let link = 0; link < this.count; link++) this.chain(link);
  }
}
