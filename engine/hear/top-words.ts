/** What a top coat is called, and words of laying one. */
export const TOP =
  /^(coats?|coated|finish|finished|refinished|topcoat|clear|poly|polyed|polyurethane|varnish|varnished|lacquer|lacquered|shellac|sealer|wax|waxed|oil|oiled|acrylic)$/;
