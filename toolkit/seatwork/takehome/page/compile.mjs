// Compile the library with the very Python that will run it: node compile.mjs FOLDER LEFT_OUT OUT
import fs from "node:fs";
import { pathToFileURL } from "node:url";

const [folder, leftOut, out] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(`${folder}/pyodide.mjs`));
const python = await loadPyodide({ indexURL: `${folder}/` });
python.FS.writeFile("/library.zip", fs.readFileSync(`${folder}/python_stdlib.zip`));
python.globals.set("left_out", python.toPy(leftOut.split(" ")));
python.runPython(`
import importlib.util, marshal, re, zipfile
CODECS = r"encodings/(__init__|aliases|ascii|latin_1|idna|punycode|cp437|cp1252|utf_.*)[.]py"
with zipfile.ZipFile("/library.zip") as given, zipfile.ZipFile("/out.zip", "w") as made:
    for name in sorted(given.namelist()):
        module = name.removesuffix(".py").replace("/", ".")
        if not name.endswith(".py") or any(f"{module}.".startswith(f"{one}.") for one in left_out):
            continue
        if name.startswith("encodings/") and not re.fullmatch(CODECS, name):
            continue
        source = given.read(name)
        code = marshal.dumps(compile(source, name, "exec", dont_inherit=True, optimize=2))
        head = importlib.util.MAGIC_NUMBER + (1).to_bytes(4, "little")
        data = head + importlib.util.source_hash(source) + code
        made.writestr(zipfile.ZipInfo(name + "c", (1980, 1, 1, 0, 0, 0)), data)
`);
fs.writeFileSync(out, python.FS.readFile("/out.zip"));
