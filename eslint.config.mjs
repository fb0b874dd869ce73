import tseslint from 'typescript-eslint';
import { noBareText } from './eslint/no-bare-text.mjs';

/** Each room may import only the rooms named here, and only their index. */
const rooms = {
  read: [],
  model: ['read'],
  check: ['read', 'model'],
  cut: ['read', 'model'],
  plan: ['read', 'model'],
  scene: ['read', 'model', 'plan'],
  draw: ['read', 'model', 'cut', 'plan', 'scene'],
  booklet: ['read', 'model', 'check', 'cut', 'plan', 'scene', 'draw'],
  page: ['read', 'model', 'check', 'cut', 'plan', 'scene', 'draw', 'booklet'],
  guide: ['read', 'model', 'check', 'cut', 'plan', 'scene', 'draw', 'booklet'],
};

const arrowsPointOneWay = Object.entries(rooms).map(([room, allowed]) => ({
  files: [`src/${room}/**/*.{ts,tsx}`],
  rules: {
    'no-restricted-imports': ['error', {
      patterns: [
        ...[...Object.keys(rooms), 'cli'].filter((other) => other !== room && !allowed.includes(other)).map((other) => ({
          group: [`**/../${other}/**`],
          message: `${room} must not know of ${other}`,
        })),
        ...allowed.map((other) => ({
          group: [`**/../${other}/**`, `!**/../${other}/index.ts`],
          message: `import ${other} through its index`,
        })),
      ],
    }],
  },
}));

export default tseslint.config(
  { ignores: ['node_modules', 'booklets', '.cache'] },
  ...tseslint.configs.strict,
  {
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      'max-lines': ['error', { max: 320, skipBlankLines: true, skipComments: true }],
    },
  },
  ...arrowsPointOneWay,
  {
    // What people read and hear comes from the locale files.
    files: ['src/booklet/pages/**', 'src/booklet/posters/**', 'src/booklet/publications/**', 'src/draw/**', 'src/page/**', 'src/guide/**'],
    plugins: { foldwright: { rules: { 'no-bare-text': noBareText } } },
    rules: {
      'foldwright/no-bare-text': ['error', {
        allow: ['mm', 'kg', 'N', 'h', 'min', 'MB', 'foldwright', 'Noto Sans', 'SIL Open Font License 1.1'],
        printers: ['isolate', 'isolateName', 'textAt'],
      }],
    },
  },
);
