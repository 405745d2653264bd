namespace Loadmark.Sheets;

/// <summary>How the commands that compute a rig's circuit are used.</summary>
internal static class SimulationHelp
{
    private const string Rig = "A rig file with its wiring, or - for one on standard input. If it has none, have it planned first: loadmark plan RIG --write FILE.";

    /// <summary>Writes the page on settle.</summary>
    public static void WriteSettle(Sheet sheet)
    {
        HelpPage.Title(sheet, "loadmark settle RIG [--spread N [--seed S]] [--json]", "what voltage does each load really get?");
        HelpPage.Entry(sheet, "RIG", Rig);
        WriteSpread(sheet);
        HelpPage.Entry(sheet, "--json", "One object: loads, outlets, findings, what was assumed.");
        HelpPage.WriteCodesAndExample(sheet, "loadmark settle examples/pit.rig.yaml");
    }

    /// <summary>Writes the page on startup.</summary>
    public static void WriteStartUp(Sheet sheet)
    {
        HelpPage.Title(
            sheet, "loadmark startup RIG [--csv FILE [--force]] [--spread N [--seed S]] [--json]", "does it all come up, and stay up?");
        HelpPage.Entry(sheet, "RIG", Rig);
        HelpPage.Entry(
            sheet, "--csv FILE", "Write the waveforms to this file: volts and amps, evenly spaced, and before and after each jump.");
        HelpPage.ForceEntry(sheet);
        WriteSpread(sheet);
        HelpPage.Entry(sheet, "--json", "One object: loads, outlets, what happened, findings, what was assumed.");
        HelpPage.WriteCodesAndExample(sheet, "loadmark startup examples/chain-start.rig.yaml");
    }

    private static void WriteSpread(Sheet sheet)
    {
        HelpPage.Entry(
            sheet,
            "--spread N",
            "Compute it N times more with draws, outlet voltages and lead lengths as they may be: what each load gets then, and how likely the rig runs.");
        HelpPage.Entry(sheet, "--seed S", "The seed of these samples, 1 if not given: the same seed gives the same answer.");
    }

    /// <summary>Writes the page on netlist.</summary>
    public static void WriteNetlist(Sheet sheet)
    {
        HelpPage.Title(sheet, "loadmark netlist RIG [--steady] [--out FILE [--force]]", "the same circuit for any SPICE program");
        HelpPage.Entry(sheet, "RIG", Rig);
        HelpPage.Entry(sheet, "--steady", "For the steady state; without it for the first seconds after switch-on.");
        HelpPage.Entry(sheet, "--out FILE", "Write it to this file instead of showing it.");
        HelpPage.ForceEntry(sheet);
        HelpPage.WriteCodesAndExample(sheet, "loadmark netlist examples/pit.rig.yaml --out pit.cir");
    }
}
