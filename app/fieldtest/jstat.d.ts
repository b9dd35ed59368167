declare module 'jstat' {
  const library: {
    readonly beta: {
      /** Quantile of the beta distribution. */
      readonly inv: (share: number, alpha: number, beta: number) => number
    }
  }
  export default library
}
