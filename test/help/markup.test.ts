import { describe, expect, it } from "vitest";
import { formulaCode, html, prose } from "../../src/help/markup";

describe("markup from a template", () => {
  it("escapes what is put into it", () => {
    const { markup } = html`<p title="${"\"a\" & 'b'"}">${"1 < 2 & 3 > 2"}</p>`;
    expect(markup).toBe('<p title="&quot;a&quot; &amp; &#39;b&#39;">1 &lt; 2 &amp; 3 &gt; 2</p>');
  });

  it("takes markup as it is, and lists one after the other", () => {
    expect(html`<p>${[html`<b>a</b>`, " & ", 2, [html`<i>c</i>`]]}</p>`.markup).toBe(
      "<p><b>a</b> &amp; 2<i>c</i></p>"
    );
  });
});

describe("text on its way to a page", () => {
  it("becomes code between backticks, escaped like any other", () => {
    expect(html`${prose("Write `<x>` & go")}`.markup).toBe("Write <code>&lt;x&gt;</code> &amp; go");
  });

  it("breaks a formula after its commas", () => {
    expect(formulaCode('=EXT.DUE(2025,"<ME>")').markup).toBe(
      "<code>=EXT.DUE(2025,<wbr />&quot;&lt;ME&gt;&quot;)</code>"
    );
  });
});
