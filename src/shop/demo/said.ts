/** Quantities as a person types them. */
export const um = (amount: number) => ({ text: String(amount), unit: 'um' }) as const;
export const percent = (amount: number) => ({ text: String(amount), unit: '%' }) as const;
export const celsius = (amount: number) => ({ text: String(amount), unit: 'C' }) as const;
export const m2 = (amount: number) => ({ text: String(amount), unit: 'm2' }) as const;
export const grams = (text: string) => ({ text, unit: 'g' }) as const;
export const ml = (amount: number) => ({ text: String(amount), unit: 'mL' }) as const;
export const months = (amount: number) => ({ text: String(amount), unit: 'months' }) as const;
/** A bare number. */
export const bare = (text: string) => ({ text, unit: 'ratio' }) as const;
