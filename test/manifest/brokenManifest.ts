/** An edit of the template that breaks one rule, and the problems that the check must find. */
export interface BrokenManifest {
  readonly slip: string;
  readonly find: string | RegExp;
  readonly put: string;
  readonly found: readonly string[];
}
