/**
 * Text that people read or hear comes from the locale files. This rule finds text that stands in the code: between
 * the tags of JSX, in attributes that are shown or said, in pieces of markup, in what sets a page's text, and in
 * calls that print their argument. Only letters count: numerals and signs are the same in every language.
 */

/** Attributes and properties that are shown or said. */
const spoken = new Set([
  'title', 'alt', 'label', 'placeholder', 'text', 'summary', 'abbr',
  'aria-label', 'aria-description', 'aria-roledescription', 'aria-placeholder', 'aria-valuetext',
]);

/** Properties of an element that set what it shows or says. */
const settable = new Set(['textContent', 'innerText', 'innerHTML', 'outerHTML', 'title', 'alt', 'placeholder', 'label', 'ariaLabel', 'ariaDescription', 'ariaValueText']);

/** Stands for `${…}` in a template. */
const gap = '\u0000';

/** @type {import('eslint').Rule.RuleModule} */
export const noBareText = {
  meta: {
    type: 'problem',
    docs: { description: 'text on a page comes from the locale files' },
    messages: { bare: '"{{text}}" stands in the code; ask the words for it by a key of locales/en' },
    schema: [{
      type: 'object',
      properties: {
        /** Symbols of units and names that are the same in every language. */
        allow: { type: 'array', items: { type: 'string' } },
        /** Functions whose first argument is printed. */
        printers: { type: 'array', items: { type: 'string' } },
      },
      additionalProperties: false,
    }],
  },
  create(context) {
    const { allow = [], printers = [] } = context.options[0] ?? {};
    const allowed = [...allow].sort((a, b) => b.length - a.length).map((word) => new RegExp(`(?<!\\p{L})${word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?!\\p{L})`, 'gu'));
    const isBare = (text) => /\p{L}/u.test(allowed.reduce((left, word) => left.replace(word, ' '), text.replace(/&#?\w+;/g, ' ')));
    const tell = (node, text) => {
      if (isBare(text)) context.report({ node, messageId: 'bare', data: { text: text.replaceAll(gap, '…').replace(/\s+/g, ' ').trim().slice(0, 40) } });
    };
    const tellAll = (expression) => { for (const { node, text } of writtenIn(expression)) tell(node, text); };
    const tellMarkup = (node, text) => { for (const each of textsOfMarkup(text)) tell(node, each); };
    return {
      JSXText: (node) => { tell(node, node.value); },
      ':matches(JSXElement, JSXFragment) > JSXExpressionContainer': (node) => { tellAll(node.expression); },
      JSXAttribute: ({ name, value }) => {
        if (spoken.has(nameOf(name))) tellAll(value?.type === 'JSXExpressionContainer' ? value.expression : value);
      },
      Property: ({ key, value, computed }) => {
        if (!computed && /^(alt|aria-)/.test(nameOf(key)) && spoken.has(nameOf(key))) tellAll(value);
      },
      AssignmentExpression: ({ left, right }) => {
        if (left.type === 'MemberExpression' && settable.has(nameOf(left.property))) tellAll(right);
      },
      CallExpression: ({ callee, arguments: given }) => {
        const called = nameOf(callee.type === 'MemberExpression' ? callee.property : callee);
        if (printers.includes(called)) tellAll(given[0]);
        if (called === 'setAttribute' && spoken.has(given[0]?.value)) tellAll(given[1]);
      },
      Literal: (node) => { if (typeof node.value === 'string') tellMarkup(node, node.value); },
      TemplateLiteral: (node) => { tellMarkup(node, templateText(node)); },
    };
  },
};

const nameOf = (node) => {
  if (node?.type === 'JSXNamespacedName') return `${node.namespace.name}:${node.name.name}`;
  return String(node?.name ?? node?.value ?? '');
};

const templateText = ({ quasis }) => quasis.map(({ value }) => value.cooked ?? '').join(gap);

/** The texts that an expression may come to, as far as they are written in it. */
function writtenIn(node) {
  switch (node?.type) {
    case 'Literal': return typeof node.value === 'string' ? [{ node, text: node.value }] : [];
    case 'TemplateLiteral': return [{ node, text: templateText(node) }];
    case 'ConditionalExpression': return [...writtenIn(node.consequent), ...writtenIn(node.alternate)];
    case 'LogicalExpression': return [...writtenIn(node.left), ...writtenIn(node.right)];
    case 'BinaryExpression': return node.operator === '+' ? [...writtenIn(node.left), ...writtenIn(node.right)] : [];
    case 'ArrayExpression': return node.elements.flatMap(writtenIn);
    case 'TSAsExpression': case 'TSSatisfiesExpression': case 'TSNonNullExpression': return writtenIn(node.expression);
    default: return [];
  }
}

/** What a string of markup shows and says: text between its tags, and its spoken attributes. Style and script are neither. */
function textsOfMarkup(text) {
  if (!/<\/?[a-z]/i.test(text) && !/\b[a-z-]+="/i.test(text)) return [];
  const markup = text.replace(/<(style|script)\b[^]*?(<\/\1>|$)/gi, '');
  const between = /<\/?[a-z]/i.test(markup) ? [...markup.matchAll(/(?<=<\/?[a-z][^<>]*)>([^<>]*)(?=<)/gi)].map(([, inner]) => inner) : [];
  const attributes = [...markup.matchAll(/\b([a-z-]+)="([^"]*)/gi)].flatMap(([, name, value]) => (spoken.has(name) ? [value] : []));
  return [...between, ...attributes];
}
