using Loadmark.CommandLines;
using Loadmark.Questions;

namespace Loadmark.Commands;

/// <summary>The program as a command, with every command below it in the order of the help.</summary>
internal static class ProgramCommands
{
    /// <summary>The program: alone it opens the page.</summary>
    public static CommandSpec Program { get; } = new()
    {
        Question = "what feeds what on a player's effects rig, and the proof of it",
        Options = PageCommand.Options,
        WhyNoJson = "the page answers in a browser, not in JSON.",
        Run = static input => new PageCommand(input).Run(),
        Commands =
        [
            new(QuestionSpecs.Ask.Name, static () => AskCommand.Spec),
            new(QuestionSpecs.Check.Name, static () => CheckCommand.Spec),
            new(QuestionSpecs.Plan.Name, static () => PlanCommand.Spec),
            new(QuestionSpecs.Buy.Name, static () => BuyCommand.Spec),
            new(QuestionSpecs.Settle.Name, static () => SettleCommand.Spec),
            new(QuestionSpecs.StartUp.Name, static () => StartUpCommand.Spec),
            new(QuestionSpecs.Netlist.Name, static () => NetlistCommand.Spec),
            new(QuestionSpecs.Sheet.Name, static () => SheetCommand.Spec),
            new("restore-sheet", static () => RestoreSheetCommand.Spec),
            new(QuestionSpecs.Accept.Name, static () => AcceptCommand.Spec),
            new("meter", static () => MeterCommand.Spec),
            new(QuestionSpecs.Read.Name, static () => ReadCommand.Spec),
            new("backup", static () => BackupCommand.Spec),
            new("restore", static () => BackupCommand.RestoreSpec),
            new("salvage", static () => BackupCommand.SalvageSpec),
            new("gear", static () => new()
            {
                Question = "the gear that your workshop knows",
                Documentation = "docs/gear.md",
                IsOnStore = true,
                Json = "One object.",
                Commands =
                [
                    new("list", static () => GearReadCommand.ListSpec),
                    new("show", static () => GearReadCommand.ShowSpec),
                    new("add", static () => GearAddCommand.Spec),
                    new("measure", static () => GearMeasureCommand.Spec),
                    new("import", static () => GearFileCommand.ImportSpec),
                    new("export", static () => GearFileCommand.ExportSpec),
                ],
                Example = "loadmark gear add delay-2 \"9V DC 300mA\" --name \"Delay with the long tail\"",
            }),
            new("rigs", static () => new()
            {
                Question = "the rigs that are kept",
                Documentation = "docs/keeping.md",
                IsOnStore = true,
                Json = "One object.",
                Commands =
                [
                    new("list", static () => RigsCommand.ListSpec),
                    new("import", static () => RigsCommand.ImportSpec),
                    new("export", static () => RigsCommand.ExportSpec),
                    new("affected", static () => AffectedCommand.Spec),
                ],
                Example = "loadmark rigs affected delay-2",
            }),
        ],
    };
}
