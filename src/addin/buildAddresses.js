/** The address in the manifest template, from which `npm run excel` serves the add-in. */
export const DEVELOPMENT_ADDRESS = "https://localhost:3000/";

/**
 * Where Microsoft serves office.js: the address since August 2026, and the one before it. While the move lasts, one may redirect to the
 * other, and the script loads its other files from the same place, so the page allows both.
 */
const PUBLIC_OFFICE_ADDRESSES = [
  "https://officeapis.public.onecdn.static.microsoft/1/office.js",
  "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
];

/** An address as given, or `undefined` if it is not a plain https address. */
function plainAddress(given) {
  if (!URL.canParse(given)) return undefined;
  const { protocol, search, hash, href } = new URL(given);
  return protocol === "https:" && search === "" && hash === "" ? href : undefined;
}

/**
 * The addresses of a build.
 *
 * @param environment - `ADDIN_ADDRESS` is the folder where the add-in is served, with or without the last slash. `OFFICE_ADDRESS` is the
 *   address of office.js, for a government cloud that does not reach the public one.
 * @returns Where the add-in is served, with the last slash; the address of office.js, its server, and the servers that the page may load
 *   scripts from; or `problem`, a sentence that says which setting cannot be used.
 */
export function buildAddresses({ ADDIN_ADDRESS, OFFICE_ADDRESS }) {
  const folder = plainAddress(ADDIN_ADDRESS ?? DEVELOPMENT_ADDRESS);
  if (folder === undefined) {
    const problem = `ADDIN_ADDRESS: "${ADDIN_ADDRESS}" is not an https address. Enter the folder where the add-in is served, such as https://your.server/extension/.`;
    return { problem };
  }
  const [usual] = PUBLIC_OFFICE_ADDRESSES;
  const officeAddress = plainAddress(OFFICE_ADDRESS ?? usual);
  if (!officeAddress?.endsWith("/office.js")) {
    const problem = `OFFICE_ADDRESS: "${OFFICE_ADDRESS}" is not an https address of office.js. Enter an address such as ${usual}.`;
    return { problem };
  }
  const allowed = PUBLIC_OFFICE_ADDRESSES.includes(officeAddress)
    ? PUBLIC_OFFICE_ADDRESSES
    : [officeAddress];
  return {
    address: folder.endsWith("/") ? folder : `${folder}/`,
    officeAddress,
    officeHost: new URL(officeAddress).host,
    officeOrigins: allowed.map((one) => new URL(one).origin).join(" "),
  };
}
