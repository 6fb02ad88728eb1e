import { existsSync, readFileSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import {
  ensureCertificatesAreInstalled,
  generateCertificates,
  verifyCertificates,
} from "office-addin-dev-certs";
import { UsageError } from "../terminal/commandLine";

const VALID_DAYS = 365;
/** Where the tools of the platform keep the certificates of this user, so that add-ins share one. */
const FOLDER = join(homedir(), ".office-addin-dev-certs");
const PLACES = {
  authority: join(FOLDER, "ca.crt"),
  certificate: join(FOLDER, "localhost.crt"),
  key: join(FOLDER, "localhost.key"),
};

/** What serves https at localhost, and whether this machine trusts it. */
export interface ExcelCertificate {
  readonly cert: Buffer;
  readonly key: Buffer;
  readonly isTrusted: boolean;
  /** The certificate authority's own certificate, to be trusted by hand. */
  readonly authority: string;
}

function isTrusted(): boolean {
  try {
    return verifyCertificates();
  } catch {
    return false;
  }
}

async function trust(): Promise<void> {
  try {
    await ensureCertificatesAreInstalled(VALID_DAYS);
  } catch (error) {
    const [reason = ""] = (error as Error).message.split("\n");
    throw new UsageError(
      `The certificate could not be made trusted (${reason.replace(/\.$/, "")}); trust ${PLACES.authority} by hand.`
    );
  }
}

/**
 * The certificate for https at localhost, made where there is none yet. Nothing is asked and nothing of the machine's trust is changed
 * unless that is wanted.
 *
 * @param wantsTrust - Whether to have the machine trust it, which asks the user.
 * @returns The certificate.
 * @throws UsageError in one sentence when trust was wanted and not given.
 */
export async function excelCertificate(wantsTrust: boolean): Promise<ExcelCertificate> {
  if (wantsTrust) await trust();
  if (!existsSync(PLACES.certificate) || !existsSync(PLACES.key)) {
    await generateCertificates(PLACES.authority, PLACES.certificate, PLACES.key, VALID_DAYS);
  }
  return {
    cert: readFileSync(PLACES.certificate),
    key: readFileSync(PLACES.key),
    isTrusted: isTrusted(),
    authority: PLACES.authority,
  };
}
