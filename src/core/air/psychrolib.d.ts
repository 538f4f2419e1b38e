declare module "psychrolib" {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetStandardAtmPressure(altitude: number): number;
    GetSatVapPres(celsius: number): number;
    GetHumRatioFromRelHum(celsius: number, relativeHumidity: number, pressure: number): number;
    GetMoistAirDensity(celsius: number, humidityRatio: number, pressure: number): number;
  };
  export default psychrolib;
}
