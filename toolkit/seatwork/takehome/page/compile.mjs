// Compile modules with the very Python that will run them: node compile.mjs FOLDER IN OUT LEFT_OUT
// IN and OUT are ZIP files. No asserts, no docstrings, no line numbers: a third of the bytes.
import fs from "node:fs";
import { pathToFileURL } from "node:url";

const [folder, given, out, leftOut] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(`${folder}/pyodide.mjs`));
const python = await loadPyodide({ indexURL: `${folder}/` });
python.FS.writeFile("/given.zip", fs.readFileSync(given));
python.globals.set("left_out", python.toPy(leftOut.split(" ").filter(Boolean)));
python.runPython(`
import ast, importlib.util, marshal, re, types, zipfile
CODECS = r"encodings/(__init__|aliases|ascii|latin_1|cp1252|utf_.*)[.]py"

def unsaid(tree):
    "Take the docstrings out; a class keeps a sign, else its data class writes one, slowly."
    told = ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef
    for node in ast.walk(tree):
        if isinstance(node, told) and ast.get_docstring(node, clean=False) is not None:
            sign = ast.Expr(ast.Constant("."))
            first = [sign] if isinstance(node, ast.ClassDef) else [] if node.body[1:] else [ast.Pass()]
            node.body[:1] = first
    return ast.fix_missing_locations(tree)

def unlined(code):
    "Say of every instruction that its line is not known: one sign for eight of them."
    inner = (unlined(one) if isinstance(one, types.CodeType) else one for one in code.co_consts)
    eights, rest = divmod(len(code.co_code) // 2, 8)
    table = bytes([0xFF] * eights + [0xF8 + rest - 1] * bool(rest))
    return code.replace(co_linetable=table, co_consts=tuple(inner))

with zipfile.ZipFile("/given.zip") as given, zipfile.ZipFile("/out.zip", "w") as made:
    for name in sorted(given.namelist()):
        module = name.removesuffix(".py").replace("/", ".")
        if not name.endswith(".py") or any(f"{module}.".startswith(f"{one}.") for one in left_out):
            continue
        if name.startswith("encodings/") and not re.fullmatch(CODECS, name):
            continue
        source = given.read(name)
        tree = unsaid(ast.parse(source))
        code = unlined(compile(tree, name, "exec", dont_inherit=True, optimize=1))
        head = importlib.util.MAGIC_NUMBER + (1).to_bytes(4, "little")
        data = head + importlib.util.source_hash(source) + marshal.dumps(code)
        made.writestr(zipfile.ZipInfo(name + "c", (1980, 1, 1, 0, 0, 0)), data)
`);
fs.writeFileSync(out, python.FS.readFile("/out.zip"));
