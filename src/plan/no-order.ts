/**
 * No order was found in which an item can be put together: what is in the way, in a sentence, and what would help. It
 * knows nothing of plans, so that a command that fails can be told apart without loading any.
 */
export class NoOrder extends Error {
  readonly why: string;
  readonly help: string;

  /** `of` is the item and its size, as they stand before the sentence. */
  constructor(why: string, help: string, of = '') {
    super(`${of === '' ? '' : `${of}: `}${why}; would help: ${help}`);
    this.name = 'NoOrder';
    this.why = why;
    this.help = help;
  }

  /** The same, told of an item in a size. */
  toldOf(item: string, size: string): NoOrder {
    return new NoOrder(this.why, this.help, `${item} ${size}`);
  }
}
