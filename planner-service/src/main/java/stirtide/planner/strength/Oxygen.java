package stirtide.planner.strength;

import java.math.BigDecimal;

/** Standard conditions at which a liter of oxygen is counted, and the molar mass of hydrogen peroxide used with them. */
public enum Oxygen {
    /** 0 degC and 1 atm: 22.41396954 L/mol (CODATA, from memory; agrees with R T / p), 34.0147 g/mol. */
    ONE_ATMOSPHERE("22.41396954", "34.0147"),
    /** 0 degC and 1 bar, the definition of IUPAC since 1982: 22.71095464 L/mol, 34.0147 g/mol. */
    ONE_BAR("22.71095464", "34.0147"),
    /** Rounded figures of school books: 22.4 L/mol, 34 g/mol. */
    SCHOOL("22.4", "34");

    private final BigDecimal litersPerMole;
    private final BigDecimal gramsPerMole;

    Oxygen(String litersPerMole, String gramsPerMole) {
        this.litersPerMole = new BigDecimal(litersPerMole);
        this.gramsPerMole = new BigDecimal(gramsPerMole);
    }

    BigDecimal litersPerMole() {
        return litersPerMole;
    }

    /** Molar mass of hydrogen peroxide, in grams per mole. */
    public BigDecimal gramsPerMole() {
        return gramsPerMole;
    }
}
