import tseslint from 'typescript-eslint';
import { noBareText } from './src/lint/no-bare-text.mjs';
import { opaqueNames } from './src/lint/opaque-names.mjs';

/** Each room may import only the rooms named here, and only their index. */
const rooms = {
  keep: [],
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

/** Read past its room's index by what must not load the room: a start that finds nothing to do. */
const light = ['read/machine-fault.ts'];

/** What a room may read of the kinds of work: their facts, their scenes, their pictures. */
const works = {
  plan: ['facts'], scene: ['facts', 'scenes'], draw: ['facts', 'pictures'], booklet: ['facts'], page: ['facts'], guide: ['facts'],
};

const onlyWorks = (catalogues) => ({
  group: ['**/work/**', ...catalogues.map((name) => `!**/work/${name}.ts`)],
  message: `of the kinds of work only ${catalogues.join(' and ') || 'nothing'} may be known here, from src/work/`,
});

/** Of the kinds of part their facts may be known everywhere but where files are read. */
const onlyParts = (room) => ({
  group: ['**/parts/**', ...(room === 'read' ? [] : ['!**/parts/facts.ts', '!**/parts/varieties.ts'])],
  message: 'of the kinds of part only src/parts/facts.ts and varieties.ts may be known here',
});

/** A kind of part knows how things are read and what a model is made of, not how it is built. */
const partFiles = {
  files: ['src/parts/**'],
  rules: {
    'no-restricted-imports': ['error', {
      patterns: [{
        group: [
          ...[...Object.keys(rooms), 'cli', 'work'].map((room) => `**/../${room}/**`),
          '!**/../read/index.ts', '!**/../model/types.ts', '!**/../model/folding.ts', '!**/../model/cable-ends.ts', '!**/../model/profiles', '**/../model/profiles/*', '!**/../model/profiles/profiles.ts',
          '!**/../model/patterns', '**/../model/patterns/*', '!**/../model/patterns/outline.ts',
        ],
        message: 'only read, and of model its types, the folding, the cut of cables and the profiles may be known here',
      }],
    }],
  },
};

/** The files of a kind of work, by what each may import beside its own folder and the catalogue's types. */
const workFiles = [
  { files: ['src/work/*.ts', 'src/work/*/facts.ts'], ignores: ['src/work/scenes.ts', 'src/work/pictures.ts'], rooms: ['read', 'model'] },
  { files: ['src/work/scenes.ts', 'src/work/*/scene.ts'], rooms: ['read', 'model', 'plan'], kits: ['scene/kit'] },
  { files: ['src/work/pictures.ts', 'src/work/*/picture.ts'], rooms: ['read', 'model', 'plan'], kits: ['draw/work-kit'] },
].map(({ files, ignores = [], rooms: known, kits = [] }) => ({
  files,
  ignores,
  rules: {
    'no-restricted-imports': ['error', {
      patterns: [{
        group: [
          ...[...Object.keys(rooms), 'cli'].map((room) => `**/../${room}/**`),
          // A folder is let in before a file of it can be.
          ...kits.flatMap((kit) => [`!**/../${kit}`, `**/../${kit}/*`]),
          ...[...known, ...kits].map((name) => `!**/../${name}/index.ts`),
        ],
        message: `only ${[...known, ...kits].join(', ')} may be known here, each through its index`,
      }],
    }],
  },
}));

const arrowsPointOneWay = Object.entries(rooms).map(([room, allowed]) => ({
  files: [`src/${room}/**/*.{ts,tsx}`],
  rules: {
    'no-restricted-imports': ['error', {
      patterns: [
        onlyWorks(works[room] ?? []),
        onlyParts(room),
        ...[...Object.keys(rooms), 'cli'].filter((other) => other !== room && !allowed.includes(other)).map((other) => ({
          group: [`**/../${other}/**`],
          message: `${room} must not know of ${other}`,
        })),
        ...allowed.map((other) => ({
          group: [`**/../${other}/**`, `!**/../${other}/index.ts`, ...light.filter((path) => path.startsWith(`${other}/`)).map((path) => `!**/../${path}`)],
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
  ...workFiles,
  partFiles,
  {
    // What people read and hear comes from the locale files.
    files: ['src/booklet/pages/**', 'src/booklet/posters/**', 'src/booklet/publications/**', 'src/draw/**', 'src/work/*/picture.ts', 'src/page/**', 'src/guide/**'],
    plugins: { foldwright: { rules: { 'no-bare-text': noBareText } } },
    rules: {
      'foldwright/no-bare-text': ['error', {
        allow: ['mm', 'kg', 'N', 'h', 'min', 'MB', 'foldwright', 'Noto Sans', 'SIL Open Font License 1.1'],
        printers: ['isolate', 'isolateName', 'textAt'],
      }],
    },
  },
  {
    // What a thing is stands in its fields; ids and keys only tell things apart.
    files: ['model', 'parts', 'check', 'cut', 'plan', 'work', 'scene', 'draw', 'booklet', 'guide', 'page'].map((room) => `src/${room}/**`),
    // The keys of texts are paths in the locale files: they are made and read there and nowhere else.
    ignores: ['src/booklet/words/**', 'src/booklet/exchange/**'],
    plugins: { names: { rules: { opaque: opaqueNames } } },
    rules: { 'names/opaque': 'error' },
  },
);
