/**
 * What to do in Excel so that it loads the served add-in.
 *
 * @param manifest - Path of the manifest.
 * @returns Lines for the terminal.
 */
export function sideloadSteps(manifest: string): string[] {
  return [
    `The manifest is ${manifest}`,
    "",
    "Excel on the web",
    "  1. Open a workbook. Home, Add-ins, More settings, Upload my add-in.",
    "  2. Choose the manifest.",
    "Excel for Windows (Microsoft 365, or Excel 2021 and later)",
    "  1. Share a folder and put the manifest into it.",
    "  2. File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs: add the folder",
    "     by its network path, tick Show in menu, and start Excel again.",
    "  3. Home, Add-ins, Shared folder.",
    "Excel for Mac (16.35 or later)",
    "  1. Copy the manifest to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef",
    "     and start Excel again.",
    "  2. Home, Add-ins.",
    "",
    "Then type =EXT. in a cell. If #NAME? stays, open the guide from the Home tab once and press",
    "Ctrl+Alt+F9. Keep this running as long as Excel uses the add-in.",
  ];
}

/**
 * What to do about a certificate that this machine does not trust yet.
 *
 * @param authority - Path of the certificate authority's own certificate.
 * @param address - Where the add-in is served.
 * @returns Lines for the terminal.
 */
export function trustSteps(authority: string, address: string): string[] {
  return [
    "This machine does not trust the certificate yet, so Excel will not load the add-in. Either",
    "  run npm run excel -- --trust once: it adds a certificate authority for development, made on",
    "  this machine and valid for a year, to those you trust. Windows asks in a window, a Mac for",
    "  your password, Linux through sudo; npx office-addin-dev-certs uninstall takes it away again;",
    `  or trust ${authority} by hand;`,
    `  or, for Excel on the web alone, open ${address}addin.html in the same browser and accept it there.`,
  ];
}
