/** Puts text on the clipboard. Excel can forbid it to a page in its pane. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
