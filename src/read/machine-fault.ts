/** The machine lets the work down: its disk or its browser. The message says what is amiss and what would help. */
export class MachineFault extends Error {}
