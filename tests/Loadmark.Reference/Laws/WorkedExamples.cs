using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Laws;

/// <summary>
/// Each worked example computed with the program's quantities, in the unit its answer is printed in. Where a row gives
/// "same", it means a circuit of the row before; where the circuit is only drawn in the book, the values stand here.
/// </summary>
public static class WorkedExamples
{
    /// <summary>One mil (0.001 inch) in metres; a circular mil is the area of a circle of that diameter.</summary>
    private const decimal Mil = 25.4e-6m;

    private const decimal Foot = 0.3048m;

    private const decimal CircularMil = 0.785398163397448m * Mil * Mil;

    /// <summary>ρ as Kuphaldt prints it, 10.09 Ω·cmil/ft, in Ω·m.</summary>
    private const decimal KuphaldtCopper = 10.09m * CircularMil / Foot;

    /// <summary>Topics that wait for what the program cannot compute yet or does not deal with, each with the reason.</summary>
    public static IReadOnlyDictionary<string, string> LeftOut { get; } = new Dictionary<string, string>
    {
        ["rc"] = "capacitors: for the simulation",
        ["rc-inrush"] = "capacitors: for the simulation",
        ["capacitor"] = "capacitors: for the simulation",
        ["rl"] = "inductors: for the simulation",
        ["kirchhoff"] = "given as loop equations: for the circuit engine",
        ["temperature"] = "resistance against temperature: for the simulation",
        ["ohm-temperature"] = "resistance against temperature: for the simulation",
        ["lead-drop-temperature"] = "resistance against temperature: for the simulation",
        ["charge"] = "coulombs are no quantity of the program",
        ["battery-runtime"] = "ampere-hours are no quantity of the program",
        ["current-density"] = "amperes per square metre are no quantity of the program",
    };

    /// <summary>Computes the answer of an example.</summary>
    /// <param name="row">A row of <c>worked_examples.csv</c>.</param>
    /// <returns>The value in the row's unit; null when no computation is written for the row.</returns>
    public static decimal? Compute(ReferenceRow row)
    {
        var given = new Given(row["given"]);
        return row["id"] switch
        {
            "os9-04" => Networks.Conductor(1.68e-8m, given.Metres("L"), WireGauge.Area(12)).Value, // 2.053 mm is AWG 12
            "os9-11" => (given.Volts("V") / (new Ohms(250_000) * 0.95m)).Value, // 250 kΩ less its 5 %
            "os9-13" or "ku-03" => (given.Volts("V") / given.Amps("I")).Value,
            "os9-14" => (given.Volts("V") * given.Amps("I")).Value,
            "os9-16" => Networks.CurrentForHeat(given.Watts("P"), given.Ohms("R")).Value,
            "ku-01" => (given.Volts("V") * (given.Volts("V") / given.Ohms("R"))).Value,

            "os10-01" or "os10-03" or "os10-06" or "ku-16" => Loop(given).Value,
            "os10-04" or "os10-07" => (given.Volts("emf") - (Loop(given) * given.Ohms("r"))).Value,
            "os10-09" => (given.Volts("dV") / given.Amps("dI")).Value,
            "os10-10" => ((given.Volts("V_charge") - given.Volts("emf")) / given.Amps("I")).Value,
            "os10-12" => Networks.Heat(Loop(given), given.Ohms("R")).Value,

            "os10-13" or "ku-04" => (given.Volts("V") / Networks.Series(given.OhmsList("R"))).Value,
            "os10-15" => Networks.Parallel(given.OhmsList("R")).Value,
            "os10-16" => (given.Volts("V") / Networks.Parallel(given.OhmsList("R"))).Value,
            "ku-06" => (given.Volts("V") / Networks.Parallel(new Ohms(10_000), new Ohms(2_000), new Ohms(1_000))).Value,

            "os10-18" => LeadWithTwoLoads.Current.Value,
            "os10-19" => LeadWithTwoLoads.AtLoads.Value,
            "os10-21" => (LeadWithTwoLoads.AtLoads / new Ohms(13)).Value,
            "os10-22" => (given.Amps("I") * Networks.Series(new Ohms(10), new Ohms(10), Networks.Parallel(new Ohms(10), new Ohms(10)))).Value,
            "os10-24" => TwoRatedInSeries().Value,
            "os10-25" => BulbBehindLead(given).Value,
            "os10-30" => FourCells().Value,
            "os10-31" => Networks.Heat(FourCells(), new Ohms(10)).Value,
            "os10-45" => TwoBranchesOfCells().Value,

            "ku-07" => Ladder.R12.Value,
            "ku-09" => Ladder.Current.Value,
            "ku-10" => (Ladder.Current * Ladder.R12).Value,
            "ku-12" => (Ladder.Current * Ladder.R12 / new Ohms(100)).Value,
            "ku-13" => (Ladder.Current * Ladder.R12 / new Ohms(250)).Value,
            "ku-15" => (Ladder.Current * Ladder.R34 / new Ohms(200)).Value,

            "ku-19" => Networks.Conductor(KuphaldtCopper, new Metres(2300 * Foot), WireGauge.Area(14)).Value,
            "ku-21" => LongestLead().Value,
            "ku-22" => KuphaldtCopper * 2300 * Foot / LongestLead().Value / CircularMil,

            "ku-27" => ((new Volts(28) - TwoSources.AtLoad) / new Ohms(4)).Value,
            "ku-28" => (TwoSources.AtLoad / TwoSources.Load).Value,
            "ku-30" => TwoSources.Open.Value,
            "ku-31" => TwoSources.Behind.Value,
            _ => null,
        };
    }

    /// <summary>The current around a source with a resistance inside and a load: I = emf ÷ (r + R).</summary>
    private static Amps Loop(Given given) => given.Volts("emf") / (given.Ohms("r") + given.Ohms("R"));

    /// <summary>30.0 W and 2.40 kW, both rated at 12.0 V, in series on 12.0 V.</summary>
    private static Watts TwoRatedInSeries()
    {
        var volts = new Volts(12);
        var total = Networks.Series(Networks.Rated(new Watts(30), volts), Networks.Rated(new Watts(2400), volts));
        return volts * (volts / total);
    }

    /// <summary>A bulb of 75.0 W at 120 V behind a lead of 0.800 Ω that carries 15.0 A in all.</summary>
    private static Watts BulbBehindLead(Given given)
    {
        var left = given.Volts("V") - (new Amps(15) * given.Ohms("R_lead"));
        return left * (left / Networks.Rated(new Watts(75), given.Volts("V")));
    }

    /// <summary>Three cells of 1.58 V, 0.0200 Ω and one of 1.53 V, 0.100 Ω in series, on 10.0 Ω.</summary>
    private static Amps FourCells() =>
        ((new Volts(1.58m) * 3) + new Volts(1.53m)) / ((new Ohms(0.02m) * 3) + new Ohms(0.1m) + new Ohms(10));

    /// <summary>
    /// The voltage of each cell, of 1.50 V and 1.00 Ω, two in series in each of two branches side by side, on 10.00 Ω.
    /// </summary>
    private static Volts TwoBranchesOfCells()
    {
        var branch = new Ohms(1) + new Ohms(1);
        var current = new Volts(3) / (Networks.Parallel(branch, branch) + new Ohms(10));
        return new Volts(1.5m) - (current / 2 * new Ohms(1));
    }

    /// <summary>The resistance each of two leads may have: 25 A, and 220 V left of 230 V.</summary>
    private static Ohms LongestLead() => (new Volts(230) - new Volts(220)) / new Amps(25) / 2;

    /// <summary>OpenStax ex. 10.4: 12.0 V, a wire of 1.00 Ω, then 6.00 Ω and 13.00 Ω side by side.</summary>
    private static class LeadWithTwoLoads
    {
        public static Amps Current => new Volts(12) / (new Ohms(1) + Networks.Parallel(new Ohms(6), new Ohms(13)));

        public static Volts AtLoads => new Volts(12) - (Current * new Ohms(1));
    }

    /// <summary>Kuphaldt ch. 7: 24 V on (100 Ω ∥ 250 Ω) + (350 Ω ∥ 200 Ω).</summary>
    private static class Ladder
    {
        public static Ohms R12 => Networks.Parallel(new Ohms(100), new Ohms(250));

        public static Ohms R34 => Networks.Parallel(new Ohms(350), new Ohms(200));

        public static Amps Current => new Volts(24) / (R12 + R34);
    }

    /// <summary>
    /// Kuphaldt ch. 10: 28 V behind 4 Ω and 7 V behind 1 Ω, side by side on a load. The sources are in the table; the
    /// load's 2 Ω is from memory and borne out by the two printed currents, which leave 8 V across 4 A.
    /// </summary>
    private static class TwoSources
    {
        public static Ohms Load => new(2);

        public static Ohms Behind => Networks.Parallel(new Ohms(4), new Ohms(1));

        /// <summary>With the load taken off: what the current around the two sources leaves of the higher.</summary>
        public static Volts Open => new Volts(28) - ((new Volts(28) - new Volts(7)) / (new Ohms(4) + new Ohms(1)) * new Ohms(4));

        public static Volts AtLoad => Open / (Behind + Load) * Load;
    }
}
