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
/** The folder in which the Office tools keep the certificates of the user, which add-ins share. */
const FOLDER = join(homedir(), ".office-addin-dev-certs");
const PLACES = {
  authority: join(FOLDER, "ca.crt"),
  certificate: join(FOLDER, "localhost.crt"),
  key: join(FOLDER, "localhost.key"),
};

/** The certificate for https at localhost, and whether this machine trusts it. */
export interface ExcelCertificate {
  readonly cert: Buffer;
  readonly key: Buffer;
  readonly isTrusted: boolean;
  /** Path of the certificate of the certificate authority, for trusting it by hand. */
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
      `This machine does not trust the certificate (${reason.replace(/\.$/, "")}). Trust ${PLACES.authority} by hand.`
    );
  }
}

/**
 * The certificate for https at localhost, which is created if there is none yet. Without `wantsTrust`, the user is not asked anything, and
 * the machine trusts the same certificates as before.
 *
 * @param wantsTrust - Whether this machine should trust the certificate, which asks the user.
 * @returns The certificate.
 * @throws UsageError when the machine should trust the certificate and does not.
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
