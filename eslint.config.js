import tseslint from 'typescript-eslint';
import astro from 'eslint-plugin-astro';

const CORE =
  'src/{units,values,standards,formulas,diagnostics,roles,stages,usb-pd,entry,logs,sharing,derived,checks,tables,figures,corpus,render,pages}/**/*.ts';

export default tseslint.config(
  {
    ignores: [
      'node_modules',
      'dist',
      'demo-site',
      '.cache',
      '.astro',
      'bench/.work',
      'bench/node_modules',
      'bench/plain-astro',
      'bench/plain-eleventy',
      'public',
      '**/*.d.ts',
    ],
  },
  {
    files: ['**/*.ts'],
    extends: [...tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { project: ['./tsconfig.json', './src/site/tsconfig.json'] } },
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      // A file is one idea: these stop the drawers, the guide asks for less.
      'max-lines': ['error', { max: 260, skipBlankLines: true, skipComments: true }],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'MemberExpression[property.name="toBeCloseTo"]',
          message: 'It is absolute: compare as printed, or relatively with a reason.',
        },
        { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' },
      ],
    },
  },
  {
    // The core is pure; the compiler keeps Node and the DOM out, these keep the clock, the locale and chance out.
    files: [CORE],
    rules: {
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      'no-restricted-globals': ['error', 'Date', 'Intl'],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random' },
        { property: 'toLocaleString' },
        { property: 'localeCompare' },
        { property: 'toLocaleUpperCase' },
        { property: 'toLocaleLowerCase' },
      ],
    },
  },
  { files: ['*.config.ts', '*.config.js'], rules: { 'no-restricted-syntax': 'off' } },
  ...astro.configs.recommended,
  // Scripts inside pages are linted without types: the plugin hands them over as files that no project knows.
  { files: ['**/*.astro', '**/*.astro/*.ts'], ...tseslint.configs.disableTypeChecked },
);
