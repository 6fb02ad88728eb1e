import { answerSection } from "./answerSection";
import { argumentsSection } from "./argumentsSection";
import { errorsSection } from "./errorsSection";
import { examplesSection } from "./examplesSection";
import type { FunctionHelp, Help } from "./helpModel";
import { formulaCode, html, type Content } from "./markup";
import { pageFrame } from "./pageFrame";
import { rulesSection } from "./rulesSection";
import { signature } from "./signature";

function linkTo(help: FunctionHelp | undefined, rel: "prev" | "next", label: string): Content {
  if (!help) return "";
  return html`<li>${label}: <a href="${help.name}.html" rel="${rel}">${help.name}</a></li>`;
}

/**
 * The page of one function.
 *
 * @param help - The function.
 * @param all - The whole help, for the links to the previous and the next function.
 * @returns The text of the file.
 */
export function functionPage(help: FunctionHelp, all: Help): string {
  const place = all.functions.indexOf(help);
  const hasOptional = help.arguments.some(({ optional }) => optional);
  return pageFrame({
    title: `${help.name}: Extension Season`,
    heading: help.name,
    body: html`<p class="task"><a href="index.html">All functions</a>, ${help.task}</p>
      <p>${help.purpose}</p>
      <p class="formula">${formulaCode(signature(help))}</p>
      ${hasOptional ? html`<p class="quiet">Arguments in square brackets are optional.</p>` : ""}
      ${examplesSection(help, all.version)} ${argumentsSection(help)} ${answerSection(help)}
      ${errorsSection(help)} ${rulesSection(help)}`,
    footer: html`<nav aria-label="Functions">
      <ul class="ways">
        ${linkTo(all.functions[place - 1], "prev", "Previous")}
        <li><a href="index.html">All functions</a></li>
        ${linkTo(all.functions[place + 1], "next", "Next")}
      </ul>
    </nav>`,
  });
}
