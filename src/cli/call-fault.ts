import type { CommanderError } from 'commander';

/** What is wrong with a call, by the parser's name for it: what was found, and what would be right. */
const SAID: Readonly<Record<string, (named: string, near: string | null) => string>> = {
  'commander.unknownOption': (named, near) => `${named}: no such option; would be right: ${near ?? 'one that --help names'}`,
  'commander.unknownCommand': (named, near) => `${named}: no such command; would be right: ${near ?? 'one that --help names'}`,
  'commander.missingArgument': (named) => `<${named}>: not given; would be right: the command followed by it`,
  'commander.optionMissingArgument': (named) => `${named}: nothing follows it; would be right: the option followed by a value`,
  'commander.missingMandatoryOptionValue': (named) => `${named}: not given; would be right: the call with it`,
  'commander.excessArguments': () => 'more is named than the command takes; would be right: what its --help names',
};

/** One line for a call that the parser refuses, without its stock phrases. */
export function callFault({ code, message }: CommanderError): string {
  const [, named = ''] = /'([^']*)'/.exec(message) ?? [];
  const [, near = null] = /Did you mean (?:one of )?(.*)\?/s.exec(message) ?? [];
  const said = SAID[code]?.(named, near) ?? `this call cannot be read (${message.replace(/^error: /, '').replaceAll('\n', ' ')}); would be right: one as its --help tells`;
  return `${said}; see: foldwright --help`;
}
