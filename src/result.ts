/** What an operation gave, or why it could not. */
export type Result<Value, Failure> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly failure: Failure };

export const succeed = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({
  ok: true,
  value,
});
export const fail = <Failure>(failure: Failure): { readonly ok: false; readonly failure: Failure } => ({
  ok: false,
  failure,
});
