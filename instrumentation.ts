/** Next's hook at the start of the server: what runs beside the requests. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME === "nodejs") {
    const { noteSocketAddresses } = await import("./lib/staff/socket-address");
    noteSocketAddresses();
    const { startDelivery, stopDelivery } = await import("./lib/mail/loop");
    const { fileFailure } = await import("./lib/enquiry/file-failure");
    startDelivery(fileFailure);
    const { startSweeping } = await import("./lib/enquiry/sweep");
    startSweeping();
    const { resumeLabels } = await import("./lib/enquiry/label-work");
    void resumeLabels().catch((error: Error) => console.error(JSON.stringify({ level: "error", event: "labels not resumed", message: error.message })));
    const { startReceiving, stopReceiving } = await import("./lib/enquiry/receive-mail");
    startReceiving();
    // Next ends the process itself; no further letter is sent or fetched meanwhile.
    for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, () => void Promise.all([stopDelivery(), stopReceiving()]));
  }
}
