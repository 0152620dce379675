/** Why there is no plan. */
export type Fault =
  | { readonly kind: 'no-working-hours' }
  | { readonly kind: 'no-booth-hours'; readonly pieceId: string; readonly stepId: string }
  | {
      readonly kind: 'step-too-long';
      readonly pieceId: string;
      readonly stepId: string;
      readonly minutes: number;
      readonly longestMinutes: number;
    }
  | { readonly kind: 'band-out-of-order'; readonly pieceId: string; readonly stepId: string }
  | {
      readonly kind: 'window-too-short';
      readonly pieceId: string;
      readonly stepId: string;
      readonly windowMinutes: number;
      readonly moveMinutes: number;
    }
  | { readonly kind: 'window-never-fits'; readonly pieceId: string; readonly stepId: string }
  | {
      readonly kind: 'gate-never-passes';
      readonly pieceId: string;
      readonly stepId: string;
      readonly failures: number;
    }
  | { readonly kind: 'no-coats-a-day'; readonly pieceId: string }
  | { readonly kind: 'never-open'; readonly pieceId: string };
