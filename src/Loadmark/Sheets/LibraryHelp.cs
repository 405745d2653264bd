namespace Loadmark.Sheets;

/// <summary>How the commands about the gear library and the rigs that are kept are used.</summary>
internal static class LibraryHelp
{
    /// <summary>Writes the page on gear.</summary>
    public static void WriteGear(Sheet sheet)
    {
        HelpPage.Title(sheet, "loadmark gear COMMAND [--data FOLDER] [--json]", "the gear that your workshop knows");
        HelpPage.Entry(
            sheet,
            "list [WORDS]",
            "All of it, or what fits the words best: tags, names, words it is filed under, labels. Typos are forgiven.");
        HelpPage.Entry(sheet, "show TAG", "What is said of one piece, what was measured, which rigs have it, what was changed.");
        HelpPage.Entry(
            sheet,
            "add TAG \"LABEL\"",
            "Add a load, or with --kind supply a supply with the outlets that its label says. --name NAME, and --words WORD,WORD to file it under.");
        HelpPage.Entry(sheet, "add --from RIG", "Add what a rig file has, with --kind only that; - is one on standard input.");
        HelpPage.Entry(
            sheet,
            "measure TAG --run \"212 mA\"",
            "Add what a meter showed of a load; --start \"520 mA for 1.5 s\", --meter \"1 % + 2 mA\" for its accuracy, --note. The figure is made of all readings.");
        HelpPage.Entry(
            sheet,
            "import FILE",
            "Take what is new in a file of gear: YAML with loads, supplies and leads, or a table. What differs is shown and left.");
        HelpPage.Entry(sheet, "export FILE", "Write the library: YAML, or a table of one kind where the name ends in .csv.");
        sheet.BlankLine();
        HelpPage.Entry(sheet, "--kind KIND", "load, supply or lead.");
        HelpPage.Entry(
            sheet,
            "--take TAG",
            "With import and add --from: take this piece though the library says otherwise; several are parted by commas.");
        HelpPage.Entry(sheet, "--take-all", "Take every piece though the library says otherwise.");
        HelpPage.Entry(sheet, "--force", "With export: replace a file of that name.");
        HelpPage.DataEntry(sheet);
        HelpPage.Entry(sheet, "--json", "One object.");
        HelpPage.WriteCodesAndExample(sheet, "loadmark gear add delay-2 \"9V DC 300mA\" --name \"Delay with the long tail\"");
    }

    /// <summary>Writes the page on rigs.</summary>
    public static void WriteRigs(Sheet sheet)
    {
        HelpPage.Title(sheet, "loadmark rigs COMMAND [--data FOLDER] [--json]", "the rigs that are kept");
        HelpPage.Entry(sheet, "list", "All of them, the last changed first.");
        HelpPage.Entry(sheet, "import FILE...", "Keep rig files, each as it stands; - is one on standard input.");
        HelpPage.Entry(
            sheet,
            "export RIG FILE",
            "Write a rig, by its name or id, to a file that stands alone: what it takes from the gear library is written into it. With --linked it goes on taking it.");
        HelpPage.Entry(
            sheet,
            "affected TAG",
            "The rigs that have other figures of a piece of gear than the library now has, each with its verdict before and after. --kind where several have the tag.");
        sheet.BlankLine();
        HelpPage.Entry(sheet, "--force", "With export: replace a file of that name.");
        HelpPage.DataEntry(sheet);
        HelpPage.Entry(sheet, "--json", "One object.");
        HelpPage.WriteCodesAndExample(sheet, "loadmark rigs affected delay-2");
    }
}
