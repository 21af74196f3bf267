// A graded sheet with its reader: entries typed before it is there are kept, and read then.
async function reading() {
  await shown;
  const { seatwork } = globalThis;
  try {
    seatwork.reader = await startPython("seatwork.takehome.inside.reader");
    byId("state").textContent = "";
    for (const item of seatwork.sheet.items) await seatwork.tell(item);
    tell(byId("state"), "The reader is ready.", "El lector está listo.");
  } catch (error) {
    seatwork.fault = String(error);
    seatwork.reader = null;
    tell(byId("state"), ...whyNot(error,
      "The reader did not start on this device. What you type is kept and saved all the same.",
      "El lector no arrancó en este aparato. Lo que escribe se guarda de todos modos."));
  }
}
reading();
