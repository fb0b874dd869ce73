/** A finding fails: the item is read and understood, and is not fit to be built. */
export class FailedCheck extends Error {}
