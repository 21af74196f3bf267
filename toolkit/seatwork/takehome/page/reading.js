// A graded sheet with its reader: entries typed before it is there are kept, and read then.
async function reading() {
  await shown;
  const { seatwork } = globalThis;
  try {
    seatwork.reader = await startPython("seatwork.takehome.inside.reader");
    byId("state").textContent = "";
    for (const item of seatwork.sheet.items) await seatwork.tell(item);
    byId("state").textContent = "The reader is ready.";
  } catch (error) {
    seatwork.fault = String(error);
    seatwork.reader = null;
    byId("state").textContent =
      "The reader did not start on this device. What you type is kept and saved all the same.";
  }
}
reading();
