/** What the command ends with, beside 0 for done. */
export const EXIT = { finding: 1, input: 2, machine: 3 } as const;

/** Each exit code in words, for the help. */
export const EXIT_CODES: readonly (readonly [code: number, meaning: string])[] = [
  [0, 'done'],
  [EXIT.finding, 'a finding fails: what is asked for is not fit to be built'],
  [EXIT.input, 'a file or the call is not as it must be; the message says what would be right'],
  [EXIT.machine, 'the machine lets the work down: its disk, its memory or its browser'],
];
