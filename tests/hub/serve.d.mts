/** An output folder as it is named from the top of the repository; port 0 for a free one. */
export function serveHub(given: {
  readonly port: number;
  readonly natsPort: number;
  readonly outDir?: string;
}): Promise<{ readonly address: string; close(): Promise<void> }>;
