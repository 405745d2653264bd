using Loadmark.CommandLines;

namespace Loadmark.Commands;

/// <summary>The program as a command, with every command below it in the order of the help.</summary>
internal static class ProgramCommands
{
    /// <summary>The program: alone it opens the page.</summary>
    public static CommandSpec Program { get; } = new()
    {
        Name = "loadmark",
        Question = "what feeds what on a player's effects rig, and the proof of it",
        Options = PageCommand.Options,
        WhyNoJson = "the page answers in a browser, not in JSON.",
        Run = static input => new PageCommand(input).Run(),
        Commands =
        [
            CheckCommand.Spec,
            PlanCommand.Spec,
            BuyCommand.Spec,
            SettleCommand.Spec,
            StartUpCommand.Spec,
            NetlistCommand.Spec,
            ReadCommand.Spec,
            BackupCommand.Spec,
            BackupCommand.RestoreSpec,
            new()
            {
                Name = "gear",
                Question = "the gear that your workshop knows",
                Documentation = "docs/gear.md",
                IsOnStore = true,
                Json = "One object.",
                Commands =
                [
                    GearReadCommand.ListSpec,
                    GearReadCommand.ShowSpec,
                    GearAddCommand.Spec,
                    GearMeasureCommand.Spec,
                    GearFileCommand.ImportSpec,
                    GearFileCommand.ExportSpec,
                ],
                Example = "loadmark gear add delay-2 \"9V DC 300mA\" --name \"Delay with the long tail\"",
            },
            new()
            {
                Name = "rigs",
                Question = "the rigs that are kept",
                Documentation = "docs/keeping.md",
                IsOnStore = true,
                Json = "One object.",
                Commands = [RigsCommand.ListSpec, RigsCommand.ImportSpec, RigsCommand.ExportSpec, AffectedCommand.Spec],
                Example = "loadmark rigs affected delay-2",
            },
        ],
    };
}
