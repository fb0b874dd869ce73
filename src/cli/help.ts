import type { Command, Help, HelpConfiguration, Option } from 'commander';
import { EXIT_CODES } from './exit-codes.ts';

/** The help in our own words: how a command is called, what stands for what, what can be chosen, how it ends. */
export const help: HelpConfiguration = {
  sortSubcommands: false,
  subcommandTerm: (command) => called(command),
  commandUsage: (command) => `${path(command)}${command.commands.length > 0 ? ' <command> …' : ''}`,
  optionDescription: (option) => `${option.description}${byDefault(option)}`,
  formatHelp: (command, helper) => [
    `${helper.commandUsage(command)}`,
    ...wrapped(helper, command.description()),
    ...list(helper, 'where', helper.visibleArguments(command).map((argument) => [helper.argumentTerm(argument), helper.argumentDescription(argument)])),
    ...list(helper, 'to choose', helper.visibleOptions(command).map((option) => [helper.optionTerm(option), helper.optionDescription(option)])),
    ...list(helper, 'commands', helper.visibleCommands(command).map((one) => [helper.subcommandTerm(one), helper.subcommandDescription(one)])),
    ...(command.parent === null ? list(helper, 'ends with', EXIT_CODES.map(([code, meaning]) => [String(code), meaning])) : []),
    '',
  ].join('\n'),
};

/** A command with what must or may be named after it. */
function called(command: Command): string {
  const named = command.registeredArguments.map((argument) => (argument.required ? `<${argument.name()}>${argument.variadic ? ' …' : ''}` : `[${argument.name()}]`));
  const must = command.options.filter(({ mandatory }) => mandatory).map(({ flags }) => flags);
  return [command.name(), ...named, ...must].join(' ');
}

function path(command: Command): string {
  return command.parent === null ? called(command) : `${path(command.parent)} ${called(command)}`;
}

function byDefault({ defaultValue }: Option): string {
  return typeof defaultValue === 'string' ? `; default: ${defaultValue}` : '';
}

function wrapped(helper: Help, text: string): readonly string[] {
  return ['', helper.boxWrap(text, widthOf(helper))];
}

function list(helper: Help, title: string, lines: readonly (readonly [term: string, meaning: string])[]): readonly string[] {
  if (lines.length === 0) return [];
  const width = Math.max(...lines.map(([term]) => term.length));
  return ['', `${title}:`, ...lines.map(([term, meaning]) => helper.formatItem(term, width, meaning, helper))];
}

const widthOf = (helper: Help): number => helper.helpWidth ?? 80;
