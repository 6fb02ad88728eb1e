/** An edit of the template that breaks one rule, and what must be found. */
export interface BrokenManifest {
  readonly slip: string;
  readonly find: string | RegExp;
  readonly put: string;
  readonly found: readonly string[];
}
