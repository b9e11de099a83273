declare module "virtual:ledger-use" {
  const uses: Readonly<Record<string, { readonly modules: readonly string[]; readonly tests: readonly string[] }>>;
  export default uses;
}
