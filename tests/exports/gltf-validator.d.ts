/** The part of the package that the tests use; it brings no types. */
declare module 'gltf-validator' {
  /** Severity: 0 error, 1 warning, 2 information, 3 hint. */
  interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly { readonly severity: number; readonly code: string; readonly message: string }[];
    };
  }
  export function validateBytes(data: Uint8Array, options?: { readonly maxIssues?: number }): Promise<Report>;
}
