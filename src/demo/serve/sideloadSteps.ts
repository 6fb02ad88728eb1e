/**
 * The steps that load the served add-in in Excel.
 *
 * @param manifest - Path of the manifest.
 * @returns Lines for the terminal.
 */
export function sideloadSteps(manifest: string): string[] {
  return [
    `The manifest is ${manifest}`,
    "",
    "Excel on the web",
    "  1. Open a workbook. Select Home, Add-ins, More settings, Upload my add-in.",
    "  2. Choose the manifest.",
    "  3. The browser asks whether Excel may reach devices on your local network, which here is",
    "     this computer. Select Allow; until then the add-in does not load. If you selected Block,",
    "     open the icon beside the address, allow local network access and load the page again.",
    "     An add-in on an https server does not bring up this question.",
    "Excel for Windows (Microsoft 365, or Excel LTSC 2024; LTSC 2021 is not supported by Microsoft)",
    "  1. Share a folder and copy the manifest into it.",
    "  2. Select File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs.",
    "     Add the network path of the folder, check Show in Menu, and restart Excel.",
    "  3. Select Home, Add-ins, Shared Folder.",
    "Excel for Mac (16.35 or later)",
    "  1. Copy the manifest to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef",
    "     and restart Excel.",
    "  2. Select Home, Add-ins.",
    "",
    "Then type =EXT. in a cell. If cells show #NAME? or #BUSY!, select the icon of the add-in under",
    "Home, Add-ins, open the function guide and select Recalculate this workbook.",
    "Leave this command running while Excel uses the add-in.",
  ];
}

/**
 * The choices for a certificate that this machine does not trust yet.
 *
 * @param authority - Path of the certificate of the certificate authority.
 * @param address - The address of the add-in.
 * @returns Lines for the terminal.
 */
export function trustSteps(authority: string, address: string): string[] {
  return [
    "This machine does not trust the certificate yet, so Excel will not load the add-in. Choose one:",
    "  - Run npm run excel -- --trust once. It creates a certificate authority on this machine, valid",
    "    for one year, and asks you to trust it. To remove it later, run",
    "    npx office-addin-dev-certs uninstall.",
    `  - Trust ${authority} by hand.`,
    `  - For Excel on the web only, open ${address}addin.html in the same browser and accept`,
    "    the certificate there.",
  ];
}
