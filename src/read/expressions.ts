import { expressionTree, namesIn } from './expression-tree.ts';
import { NoValue, dimensionWords, treeValue } from './expression-value.ts';
import { FaultError } from './faults.ts';
import { messages } from './messages.ts';
import type { Reading } from './quantities.ts';
import type { Dimension, Expression, Position, Quantity } from './types.ts';
import { quoted } from './yaml-source.ts';

/** An expression with the names it needs. */
export interface ReadExpression {
  readonly expression: Expression;
  readonly needs: readonly string[];
  /** As `expression.evaluate`, but throws the bare NoValue. */
  readonly value: Expression['evaluate'];
}

/** What an expression of a piece must give. Named expressions are free (null). */
export type Wanted = Extract<Dimension, 'length' | 'count'> | null;

/** Reads an expression, or says what is wrong with its text. Values are checked when it is evaluated. */
export function readExpression(raw: string | number, position: Position, field: string, wanted: Wanted): Reading<ReadExpression> {
  const text = String(raw);
  const tree = expressionTree(text);
  if ('remedy' in tree) return tree;
  const value: Expression['evaluate'] = (names) => asWanted(treeValue(tree.value, names), wanted);
  const evaluate: Expression['evaluate'] = (names) => {
    try {
      return value(names);
    } catch (error) {
      if (!(error instanceof NoValue)) throw error;
      const found = error.result === null ? quoted(text) : messages.gives(quoted(text), messages.noNumber);
      throw new FaultError([{ position, field, found, remedy: error.message }]);
    }
  };
  return { value: { expression: { text, position, evaluate }, needs: namesIn(tree.value), value } };
}

function asWanted(quantity: Quantity, wanted: Wanted): Quantity {
  if (wanted === null || quantity.dimension === wanted) return quantity;
  throw new NoValue(messages.resultInstead(dimensionWords(wanted), dimensionWords(quantity.dimension)));
}
