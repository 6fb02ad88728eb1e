/** The page is narrow below 900 pixels, as in the style sheet: the pane then covers the grid instead of being beside it. */
const NARROW = matchMedia("(max-width: 899.98px)");

/** The parts of the page that show and hide the pane. */
export interface PaneControls {
  readonly pane: HTMLElement;
  readonly grid: HTMLElement;
  /** Shows and hides the pane, above the grid. */
  readonly toggle: HTMLElement;
  /** Leads from a pane that covers the grid back to the grid. */
  readonly back: HTMLElement;
}

/** The pane beside the grid. On a narrow page it is hidden at first, and covers the grid while it is shown. */
export class SidePane {
  readonly #controls: PaneControls;
  readonly #enterGrid: () => void;

  /**
   * @param controls - The parts of the page.
   * @param enterGrid - Puts the focus into the grid.
   */
  constructor(controls: PaneControls, enterGrid: () => void) {
    this.#controls = controls;
    this.#enterGrid = enterGrid;
    this.#show(!NARROW.matches);
    NARROW.addEventListener("change", () => {
      this.#show(!NARROW.matches || this.#controls.pane.contains(document.activeElement));
    });
    controls.toggle.addEventListener("click", () => {
      if (this.#isHidden) this.open();
      else this.#show(false);
    });
    controls.back.addEventListener("click", () => {
      this.showGrid();
    });
  }

  /** Whether the pane is shown, or would be in the place of the grid. */
  get isReachable(): boolean {
    return NARROW.matches || !this.#isHidden;
  }

  /** Shows the pane. The focus moves into it where it covers the grid. */
  open(): void {
    this.#show(true);
    if (NARROW.matches) this.#controls.pane.focus();
  }

  /** Puts the focus into the grid, and hides a pane that covers it. */
  showGrid(): void {
    if (NARROW.matches) this.#show(false);
    this.#enterGrid();
  }

  get #isHidden(): boolean {
    return Boolean(this.#controls.pane.hidden);
  }

  #show(isShown: boolean): void {
    const { pane, grid, toggle } = this.#controls;
    pane.hidden = !isShown;
    grid.inert = isShown && NARROW.matches;
    toggle.setAttribute("aria-expanded", String(isShown));
  }
}
