/** A full sprayed coat, wet (common practice, no source). */
export const USUAL_COAT = {
  metric: { text: '85', unit: 'um' },
  us: { text: '3.5', unit: 'mil' },
} as const;
