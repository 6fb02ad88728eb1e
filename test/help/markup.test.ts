import { describe, expect, it } from "vitest";
import { formulaCode, html, listed, prose } from "../../src/help/markup";

describe("markup from a template", () => {
  it("escapes the text put into it", () => {
    const { markup } = html`<p title="${"\"a\" & 'b'"}">${"1 < 2 & 3 > 2"}</p>`;
    expect(markup).toBe('<p title="&quot;a&quot; &amp; &#39;b&#39;">1 &lt; 2 &amp; 3 &gt; 2</p>');
  });

  it("keeps markup, and joins the items of a list", () => {
    expect(html`<p>${[html`<b>a</b>`, " & ", 2, [html`<i>c</i>`]]}</p>`.markup).toBe(
      "<p><b>a</b> &amp; 2<i>c</i></p>"
    );
  });
});

describe("text for a page", () => {
  it("becomes escaped code between backticks", () => {
    expect(html`${prose("Write `<x>` & go")}`.markup).toBe("Write <code>&lt;x&gt;</code> &amp; go");
  });

  it("joins items with commas and a last word", () => {
    expect(html`${listed(["a", "b", "c"])}`.markup).toBe("a, b and c");
    expect(html`${listed(["a", "b"], ",")}`.markup).toBe("a, b");
    expect(html`${listed(["a"])}`.markup).toBe("a");
  });

  it("can break a formula after its commas", () => {
    expect(formulaCode('=EXT.DUE(2025,"<ME>")').markup).toBe(
      "<code>=EXT.DUE(2025,<wbr />&quot;&lt;ME&gt;&quot;)</code>"
    );
  });
});
