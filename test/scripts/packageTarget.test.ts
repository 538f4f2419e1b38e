/** A package replaces an earlier package, and nothing that belongs to anybody. Real folders, each made here. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync } from "node:fs";
import { renameSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { filesOf, zipOf } from "../../scripts/package/files";
import { MARKER, markerOf } from "../../scripts/package/marker";
import { replaceFolder, replaceZip } from "../../scripts/package/replace";
import { targetFolder } from "../../scripts/package/target";

let base: string; // a drive of its own: home/me/project and whatever a test puts beside it
let owned: { project: string; home: string };

beforeEach(() => {
  base = realpathSync(mkdtempSync(path.join(tmpdir(), "target-")));
  owned = { project: path.join(base, "home", "me", "project"), home: path.join(base, "home", "me") };
  write("home/me/project/package.json", "{}");
  write("home/me/project/manifest.xml", "<OfficeApp/>");
  write("home/me/project/.git/HEAD", "ref: refs/heads/main");
  write("home/me/project/dist/manifest.xml", "<OfficeApp/>");
});

afterEach(() => rmSync(base, { recursive: true, force: true }));

const at = (name: string): string => path.join(base, name);

function write(name: string, text: string): void {
  mkdirSync(path.dirname(at(name)), { recursive: true });
  writeFileSync(at(name), text);
}

/** The name of everything below the base, and what each file holds. */
const everything = (): string[] => [
  ...readdirSync(base, { recursive: true, encoding: "utf8" }),
  ...filesOf(base).map((file) => `${file.path}: ${Buffer.from(file.bytes).toString("utf8")}`),
];

/** Packs two files, one in a folder, as `npm run package` does. */
async function pack(named: string, text: string): Promise<void> {
  const folder = targetFolder(named, owned);
  await replaceFolder(folder, owned, async (aside) => {
    mkdirSync(path.join(aside, "help"));
    writeFileSync(path.join(aside, "index.html"), text);
    writeFileSync(path.join(aside, "help", "index.html"), text);
    writeFileSync(path.join(aside, MARKER), markerOf(filesOf(aside)));
  });
  replaceZip(folder, zipOf(filesOf(folder)));
}

const PROJECT = /is or holds the project itself; name another folder with --out$/;
const HOME = /is or holds your home folder; name another folder with --out$/;
const BUILD = /is where the build writes; name another folder with --out$/;

describe("a package is refused", () => {
  test.each([
    ["the project", "home/me/project", PROJECT],
    ["the project by a way round", "home/me/project/src/..", PROJECT],
    ["the folder above the project", "home/me", PROJECT],
    ["a folder further above", "home", PROJECT],
    ["the file system's root", path.parse(tmpdir()).root, PROJECT],
    ["what the build wrote", "home/me/project/dist", BUILD],
    ["a new folder in what the build wrote", "home/me/project/dist/club", BUILD],
  ])("for %s", async (_, named, why) => {
    const before = everything();
    await expect(pack(path.resolve(base, named), "new")).rejects.toThrow(why);
    expect(everything()).toEqual(before);
  });

  test("for the home folder, where the project lies elsewhere", async () => {
    renameSync(owned.project, at("project"));
    owned = { ...owned, project: at("project") };
    const before = everything();
    await expect(pack(at("home/me"), "new")).rejects.toThrow(HOME);
    await expect(pack(at("home"), "new")).rejects.toThrow(HOME);
    expect(everything()).toEqual(before);
  });

  test("for what the build would write, though it has not yet", async () => {
    rmSync(at("home/me/project/dist"), { recursive: true });
    await expect(pack(at("home/me/project/dist"), "new")).rejects.toThrow(BUILD);
    expect(existsSync(at("home/me/project/dist"))).toBe(false);
  });

  test.each([
    ["the project", "home/me/project", PROJECT],
    ["the home folder", "home/me", PROJECT],
    ["what the build wrote", "home/me/project/dist", BUILD],
    ["nothing", "nowhere", /link is a link that leads nowhere; name another folder with --out$/],
  ])("for a link to %s, and for a folder behind such a link", async (_, to, why) => {
    symlinkSync(at(to), at("link"), "junction");
    const before = everything();
    await expect(pack(at("link"), "new")).rejects.toThrow(why);
    if (to.endsWith("dist") || to === "nowhere") await expect(pack(at("link/inner"), "new")).rejects.toThrow(why);
    expect(everything()).toEqual(before);
  });

  test.each([
    ["another add-in", { "manifest.xml": "<OfficeApp/>" }, /holds files of something else\. Nothing in it was touched/],
    ["another repository", { ".git/HEAD": "ref" }, /holds files of something else\. Nothing in it was touched/],
    ["a file named like the marker", { [MARKER]: "shopping list" }, /holds files of something else\. Nothing in it/],
  ])("for a folder of %s", async (_, files, why) => {
    for (const [name, text] of Object.entries(files)) write(`other/${name}`, text);
    const before = everything();
    await expect(pack(at("other"), "new")).rejects.toThrow(why);
    expect(everything()).toEqual(before);
  });

  test("for a file", async () => {
    write("other", "text");
    await expect(pack(at("other"), "new")).rejects.toThrow(/other is no folder; name another folder with --out$/);
    expect(readFileSync(at("other"), "utf8")).toBe("text");
  });

  test("for a folder whose zip beside it is somebody's own", async () => {
    write("club.zip", "letters");
    await expect(pack(at("club"), "new")).rejects.toThrow(/club\.zip is no package of ours\. It was not touched/);
    expect(readFileSync(at("club.zip"), "utf8")).toBe("letters");
    expect(existsSync(at("club"))).toBe(false);
  });
});

describe("an earlier package", () => {
  beforeEach(() => pack(at("club"), "old"));

  test("is replaced as a whole, with its zip, and leaves nothing beside it", async () => {
    await pack(at("club"), "new");
    expect(readFileSync(at("club/help/index.html"), "utf8")).toBe("new");
    expect(readFileSync(at("club.zip")).equals(zipOf(filesOf(at("club"))))).toBe(true);
    expect(readdirSync(base).sort()).toEqual(["club", "club.zip", "home"]);
  });

  test("is replaced where a link leads to it, and the link stays", async () => {
    symlinkSync(at("club"), at("link"), "junction");
    await pack(at("link"), "new");
    expect(readFileSync(at("link/index.html"), "utf8")).toBe("new");
    expect(realpathSync(at("link"))).toBe(at("club"));
  });

  test.each([
    ["a file more", () => write("club/CNAME", "club.example"), /holds CNAME, which no package put there\. Nothing/],
    ["a file more in a folder of ours", () => write("club/help/my.html", ""), /help.my\.html, which no package put/],
    [
      "a changed file",
      () => write("club/index.html", "by hand"),
      /index\.html, which was changed since it was packaged/,
    ],
    ["a folder of no file", () => mkdirSync(at("club/photos")), /holds photos, which no package put there/],
    ["a link", () => symlinkSync(at("home"), at("club/link"), "junction"), /holds link, which no package put there/],
  ])("that holds %s is refused and stays", async (_, change, why) => {
    change();
    const before = everything();
    await expect(pack(at("club"), "new")).rejects.toThrow(why);
    expect(everything()).toEqual(before);
  });

  test("stays as it was where making a new one fails, and nothing is left beside it", async () => {
    const before = everything();
    const make = async (aside: string): Promise<void> => {
      writeFileSync(path.join(aside, "index.html"), "half");
      throw new Error("no room on the disk");
    };
    await expect(replaceFolder(at("club"), owned, make)).rejects.toThrow("no room on the disk");
    expect(everything()).toEqual(before);
  });

  test("stays where somebody put a file into it while the new one was made", async () => {
    const make = async (): Promise<void> => write("club/letter.txt", "written meanwhile");
    await expect(replaceFolder(at("club"), owned, make)).rejects.toThrow(
      /holds letter\.txt, which no package put there/,
    );
    expect(readFileSync(at("club/letter.txt"), "utf8")).toBe("written meanwhile");
    expect(readFileSync(at("club/index.html"), "utf8")).toBe("old");
  });
});

test("an empty folder is filled, and so is one that does not exist yet, in folders that do not exist yet", async () => {
  mkdirSync(at("empty"));
  await pack(at("empty"), "new");
  await pack(at("a/b/club"), "new");
  for (const name of ["empty", "a/b/club"]) expect(readFileSync(at(`${name}/index.html`), "utf8")).toBe("new");
});

test("beside the project, in it, and in the home folder there is room for a package", async () => {
  for (const name of ["home/me/project/package", "home/me/club", "home/me/project-next"]) await pack(at(name), "new");
  expect(readFileSync(at("home/me/project/.git/HEAD"), "utf8")).toBe("ref: refs/heads/main");
});
