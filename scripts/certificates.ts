import type { Secure } from "./serve";

/**
 * A certificate for https://localhost that this machine trusts: Excel loads add-ins over https only. The first time, the
 * system asks whether to trust it.
 */
export async function certificates(): Promise<Secure> {
  try {
    const { getHttpsServerOptions } = await import("office-addin-dev-certs");
    const { key, cert } = await getHttpsServerOptions();
    return { key, cert };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new Error(
      `no trusted certificate for https://localhost could be made (${reason.trim()}). ` +
        "Run `npx office-addin-dev-certs install` by hand and confirm what the system asks, or start without --https and use the local sheet.",
    );
  }
}
