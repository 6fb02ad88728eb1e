/** A label as it is compared: lower case, with a space for everything but letters and digits. */
export function plainLabel(label: string): string {
  return label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}
