// Heads of the tables that go out as CSV.

export const TABLE_HEADS = {
  coats: [
    'Time (UTC)',
    'Zone',
    'Piece',
    'Coat',
    'Jar',
    'How',
    'Film by',
    'Film',
    'Film unit',
    'Passes',
    'Air temperature',
    'Temperature unit',
    'Humidity',
    'Humidity unit',
  ],
  recipes: ['Time (UTC)', 'Recipe', 'Version', 'Ingredient', 'Amount', 'Unit', 'By', 'Of', 'Note'],
  readings: ['Time (UTC)', 'Zone', 'Match', 'Of', 'Read as', 'Light', 'L*', 'a*', 'b*', 'Note'],
} as const;
