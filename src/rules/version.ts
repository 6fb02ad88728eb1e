import packageFile from "../../package.json";

/** Version of the add-in, from package.json. */
export const version: string = packageFile.version;
