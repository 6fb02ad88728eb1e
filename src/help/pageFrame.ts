import { html, type Content, type Markup } from "./markup";

/** Only the style sheets and icons of the build are allowed, and no script. */
const POLICY =
  "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/** What differs from page to page. */
export interface PageContent {
  readonly title: string;
  readonly heading: Content;
  readonly body: Content;
  /** Links at the end of the page. */
  readonly footer: Content;
}

const cautions: Markup = html`<section aria-labelledby="cautions">
  <h2 id="cautions">Before you use a result</h2>
  <ul>
    <li>Every result is an estimate, not tax or legal advice.</li>
    <li>Check it against the current official text. The law may have changed.</li>
    <li>The licensed tax professional makes the final decision.</li>
  </ul>
</section>`;

/**
 * A whole page: head, link to skip the top, heading, cautions and links at the end.
 *
 * @param page - What differs from page to page.
 * @returns The text of the file.
 */
export function pageFrame(page: PageContent): string {
  const { title, heading, body, footer } = page;
  return html`<!doctype html>
    <html lang="en-US">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${POLICY}" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>${title}</title>
        <link rel="icon" href="../icons/icon-32.png" />
        <link rel="stylesheet" href="../addin.css" />
        <link rel="stylesheet" href="help.css" />
      </head>
      <body>
        <a class="skip" href="#main">Skip to the content</a>
        <header>
          <img src="../icons/icon-64.png" alt="" width="32" height="32" />
          <p>Extension Season</p>
        </header>
        <main id="main" tabindex="-1">
          <h1>${heading}</h1>
          ${body} ${cautions}
        </main>
        <footer>${footer}</footer>
      </body>
    </html>`.markup;
}
