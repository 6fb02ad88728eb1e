// Without the host's script there is no host to register the functions with. Only the guide calls them.
if (typeof Office === "undefined") {
  class RefusedError {
    constructor(
      readonly code: string,
      readonly message?: string
    ) {}
  }
  Object.assign(globalThis, {
    CustomFunctions: {
      associate: () => undefined,
      Error: RefusedError,
      ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
    },
  });
}
