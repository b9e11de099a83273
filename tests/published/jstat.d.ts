/** The part of jStat that the checks use; the package ships no types. */
declare module "jstat" {
  interface Distribution {
    readonly cdf: (value: number, ...parameters: number[]) => number;
  }
  const jstat: { readonly jStat: { readonly normal: Distribution; readonly binomial: Distribution } };
  export default jstat;
}
