/** Hands a text to the browser as a file; nothing is sent. */
export const saveFile = (text: string, name: string, type = "text/plain"): void => {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = Object.assign(document.createElement("a"), { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
};
