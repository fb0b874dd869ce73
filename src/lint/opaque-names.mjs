/**
 * Ids and keys only tell things apart. What a thing is, where it sits, to which other it belongs is told by its fields;
 * whoever reads that out of an id breaks as soon as ids are made in another way. This rule finds where an id or a key
 * is taken apart: by methods of strings, by patterns, sign by sign, or by reading it as a number or as JSON.
 *
 * An id is what is called `id`, `key`, or ends in `Id` or `Key`; one of a list that is called `ids`, `keys` or ends so;
 * and what is taken from there by another name.
 */

const ID = /^(id|key)$|[a-z0-9](Id|Key)$/;
const IDS = /^(ids|keys)$|[a-z0-9](Ids|Keys)$/;

const takesApart = new Set([
  'startsWith', 'endsWith', 'includes', 'split', 'slice', 'substring', 'substr', 'indexOf', 'lastIndexOf', 'search',
  'match', 'matchAll', 'replace', 'replaceAll', 'at', 'charAt', 'charCodeAt', 'codePointAt',
]);
/** Methods of patterns, and functions, that take apart what they are given. */
const patternMethods = new Set(['test', 'exec']);
const readers = new Set(['Number', 'parseInt', 'parseFloat', 'JSON.parse', 'Number.parseInt', 'Number.parseFloat', 'Array.from']);
/** Methods of a list that hand its entries on one by one, or that give some of them. */
const eachOf = new Set(['map', 'flatMap', 'filter', 'find', 'findLast', 'findIndex', 'findLastIndex', 'some', 'every', 'forEach', 'sort', 'toSorted']);
const someOf = new Set(['filter', 'slice', 'sort', 'toSorted', 'toReversed', 'reverse', 'concat']);
const oneOf = new Set(['at', 'find', 'findLast', 'pop', 'shift']);

/** @type {import('eslint').Rule.RuleModule} */
export const opaqueNames = {
  meta: {
    type: 'problem',
    docs: { description: 'ids and keys are never taken apart' },
    messages: { apart: '"{{name}}" is an id or a key and is taken apart here; ask a field of what it names instead' },
    schema: [],
  },
  create(context) {
    const { sourceCode } = context;
    const read = readerOf((node) => sourceCode.getScope(node));
    const tell = (node, id) => { context.report({ node, messageId: 'apart', data: { name: sourceCode.getText(id) } }); };
    return {
      CallExpression: (node) => {
        const callee = bare(node.callee);
        const [given] = node.arguments;
        if (callee.type === 'MemberExpression') {
          const method = nameOf(callee.property);
          if (takesApart.has(method) && read.isId(callee.object)) tell(node, callee.object);
          if (patternMethods.has(method) && read.isId(given)) tell(node, given);
        }
        if (readers.has(sourceCode.getText(callee)) && read.isId(given)) tell(node, given);
      },
      MemberExpression: (node) => {
        if (node.computed && isPlace(bare(node.property)) && read.isId(node.object)) tell(node, node.object);
      },
      'ArrayExpression > SpreadElement': ({ argument }) => { if (read.isId(argument)) tell(argument, argument); },
    };
  },
};

const isPlace = ({ type, value }) => type === 'Literal' && typeof value === 'number';

/** The expression without what only types and chains put round it. */
function bare(node) {
  switch (node?.type) {
    case 'ChainExpression': case 'TSNonNullExpression': case 'TSAsExpression': case 'TSSatisfiesExpression': return bare(node.expression);
    default: return node;
  }
}

const nameOf = (node) => String(node?.name ?? node?.value ?? '');

/** The name that an expression ends in: that of a variable, or of the field that is asked for. */
function lastName(node) {
  if (node.type === 'Identifier') return node.name;
  return node.type === 'MemberExpression' && !node.computed ? nameOf(node.property) : '';
}

/** Tells ids, and lists of ids, by their names and by where they come from. */
function readerOf(scopeOf) {
  const isId = (node) => is(node, ID, comesFromIds);
  const areIds = (node) => is(node, IDS, listOfIds);

  function is(given, names, otherwise) {
    const node = bare(given);
    switch (node?.type) {
      case undefined: return false;
      case 'LogicalExpression': return is(node.left, names, otherwise) || is(node.right, names, otherwise);
      case 'ConditionalExpression': return is(node.consequent, names, otherwise) || is(node.alternate, names, otherwise);
      default: return names.test(lastName(node)) || otherwise(node);
    }
  }

  function comesFromIds(node) {
    if (node.type === 'Identifier') return definitionsOf(node, scopeOf(node)).some(isDefinedAsId);
    if (node.type === 'MemberExpression') return node.computed && areIds(node.object);
    return node.type === 'CallExpression' && called(node, oneOf);
  }

  function listOfIds(node) {
    if (node.type === 'ArrayExpression') return node.elements.some((each) => each?.type === 'SpreadElement' && areIds(each.argument));
    if (node.type === 'Identifier') return definitionsOf(node, scopeOf(node)).some(({ node: { type, id, init } }) => type === 'VariableDeclarator' && id.type === 'Identifier' && areIds(init));
    if (node.type !== 'CallExpression') return false;
    const callee = bare(node.callee);
    // `Object.keys(…)` and `map.keys()`.
    return (callee.type === 'MemberExpression' && nameOf(callee.property) === 'keys') || called(node, someOf);
  }

  function called({ callee: given }, methods) {
    const callee = bare(given);
    return callee.type === 'MemberExpression' && methods.has(nameOf(callee.property)) && areIds(callee.object);
  }

  function isDefinedAsId({ name, node }) {
    const { parent } = name;
    if (parent.type === 'Property' && parent.parent.type === 'ObjectPattern') return ID.test(nameOf(parent.key));
    if (parent.type === 'ArrayPattern') return isListPattern(parent);
    if (node.type === 'VariableDeclarator') return node.id === name && (node.parent.parent.type === 'ForOfStatement' ? areIds(node.parent.parent.right) : isId(node.init));
    return isFirstGiven(node, name);
  }

  /** Whether the pattern takes entries out of a list of ids. */
  function isListPattern({ parent, type: _, ...pattern }) {
    if (parent.type === 'Property') return IDS.test(nameOf(parent.key));
    return parent.type === 'VariableDeclarator' && parent.id.range[0] === pattern.range[0] && areIds(parent.init);
  }

  /** The parameter of a function that is given each entry of a list of ids. */
  function isFirstGiven(made, name) {
    const { parent, params = [] } = made;
    return params[0] === name && parent?.type === 'CallExpression' && parent.arguments[0] === made && called(parent, eachOf);
  }

  return { isId, areIds };
}

function definitionsOf({ name }, scope) {
  for (let each = scope; each; each = each.upper) {
    const found = each.set.get(name);
    if (found) return found.defs;
  }
  return [];
}
