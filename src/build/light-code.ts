/** The helper that a build puts around every import; without a list of files to fetch beside it, it has nothing to do. */
const HELPER = /import\{(?:\w+ as )?([\w$]+)\}from"\.\/preload-helper\.[\w-]+\.js";/;

const IMPORT = '(import\\((?:`[^`]*`|"[^"]*")\\))';
const THEN = "((?:\\.then\\([\\w$]+=>(?:[\\w$.]+|\\(\\{[^{}()]*\\}\\))\\))*)";

/** An import with or without what is taken from it, and one of which a single name is taken. */
const wrappings = (name: string): readonly RegExp[] => {
  const called = `(?<![\\w$.])${name.replaceAll("$", "\\$")}\\(`;
  return [new RegExp(`${called}\\(\\)=>${IMPORT}${THEN},\\[\\]\\)`, "g"), new RegExp(`${called}async\\(\\)=>\\{let\\{([\\w$]+):([\\w$]+)\\}=await ${IMPORT}${THEN};return\\{\\1:\\2\\}\\},\\[\\]\\)`, "g")];
};

/** The wrapped imports of a script as plain ones, and the helper left out where nothing else asks for it. */
export const lightCode = (code: string): string => {
  const [line, name] = HELPER.exec(code) ?? [];
  if (line === undefined || name === undefined) return code;
  const [plain = /$^/, single = /$^/] = wrappings(name);
  const light = code.replace(plain, "$1$2").replace(single, "$3$4");
  // Its calls begin with an arrow; another thing of the same short name may live in an inner scope.
  const isAsked = new RegExp(`(?<![\\w$.])${name.replaceAll("$", "\\$")}\\((?:async)?\\(`).test(light);
  return isAsked ? light : light.replace(line, "");
};
