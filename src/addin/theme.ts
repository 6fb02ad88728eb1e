import "@fluentui/web-components/button/define.js";
import { createDarkTheme, createLightTheme, type BrandVariants } from "@fluentui/tokens";
import { setTheme } from "@fluentui/web-components";

/** Our color, from dark to light; the ramp that the Fluent themes are made from. */
const BRAND: BrandVariants = {
  10: "#030d0b",
  20: "#061b18",
  30: "#092824",
  40: "#0b342f",
  50: "#0e413a",
  60: "#114b44",
  70: "#13584f",
  80: "#16645a",
  90: "#239082",
  100: "#46c3b3",
  110: "#61c7ba",
  120: "#7fcdc3",
  130: "#9fd5ce",
  140: "#bee0db",
  150: "#d6ebe8",
  160: "#eaf5f4",
};
const LIGHT = createLightTheme(BRAND);
const DARK = createDarkTheme(BRAND);
const PREFERENCE = matchMedia("(prefers-color-scheme: dark)");

/**
 * Gives the page the light or dark theme. The host's theme decides if the host tells it, otherwise the settings of the computer.
 *
 * @param isHostDark - Whether the host is dark; `undefined` if it does not say.
 */
export function followTheme(isHostDark: boolean | undefined): void {
  const follow = (): void => {
    const isDark = isHostDark ?? PREFERENCE.matches;
    setTheme(isDark ? DARK : LIGHT);
    document.documentElement.dataset["theme"] = isDark ? "dark" : "light";
  };
  PREFERENCE.onchange = follow;
  follow();
}
