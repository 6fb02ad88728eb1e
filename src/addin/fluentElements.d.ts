import type { HTMLAttributes } from "preact";

/** The Fluent elements that the pane uses, with those of their attributes that it sets. */
interface FluentElements {
  "fluent-button": HTMLAttributes<HTMLElement> & {
    readonly appearance?: "primary" | "outline" | "subtle";
    readonly size?: "small" | "medium";
    readonly disabled?: boolean;
  };
}

declare module "preact" {
  // The types of a JSX library are extended by merging into its namespace.
  namespace JSX {
    interface IntrinsicElements {
      "fluent-button": FluentElements["fluent-button"];
    }
  }
}
