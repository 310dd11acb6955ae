/**
 * Reflectance of a scattering, absorbing layer over a ground (Kubelka and Munk), without surface reflection.
 * @param absorption K·X of the layer @param scattering S·X of the layer @param ground 0–1
 */
export const kubelkaMunk = (absorption: number, scattering: number, ground: number): number => {
  if (scattering < 1e-9) return ground * Math.exp(-2 * absorption);
  if (absorption < 1e-9) return ((1 - ground) * scattering + ground) / ((1 - ground) * scattering + 1);
  const a = 1 + absorption / scattering;
  const b = Math.sqrt(a * a - 1);
  const x = b * scattering;
  const bcoth = x > 20 ? b : b / Math.tanh(x);
  return (1 - ground * (a - bcoth)) / (a - ground + bcoth);
};
