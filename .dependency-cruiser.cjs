// The shape of the house, top to bottom: a folder may import itself and the folders below it.
const FLOORS = [
  'screens',
  'parts',
  'actions',
  'hub',
  'verdicts',
  'shop',
  'reminders',
  'logbook',
  'planner',
  'estimator',
  'science',
];
// At the very bottom, for every floor: units, the English text, the outcome type.
const GROUND = '^src/(units\\.ts$|words/|result\\.ts$)';

const floorRules = FLOORS.map((floor, index) => ({
  name: `${floor}-imports-only-downwards`,
  severity: 'error',
  from: { path: `^src/${floor}/` },
  to: { path: '^src/', pathNot: [`^src/(${FLOORS.slice(index).join('|')})/`, GROUND] },
}));

module.exports = {
  forbidden: [
    ...floorRules,
    {
      name: 'the-ground-imports-nothing-above',
      severity: 'error',
      from: { path: GROUND },
      to: { path: '^src/', pathNot: GROUND },
    },
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'science-is-pure',
      comment: 'Formulas run in the worker, in tests and in the page: no packages, no words, no browser.',
      severity: 'error',
      from: { path: '^src/(science|estimator)/' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core'] },
    },
    {
      name: 'no-orphans',
      severity: 'error',
      from: { orphan: true, pathNot: ['\\.d\\.ts$'] },
      to: {},
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
  },
};
