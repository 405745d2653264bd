using System.Text;
using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Ratings;
using Loadmark.Processes;
using Loadmark.Outputs;
using Loadmark.Questions;
using Loadmark.Simulation;
using Loadmark.Simulation.Wiring;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary><c>loadmark netlist</c>: the same circuit for any SPICE program.</summary>
internal sealed class NetlistCommand(CommandInput input)
{
    private static readonly OptionSpec Out = new("out", OptionKind.Text, "Write it to this file instead of showing it.")
    {
        Placeholder = "FILE",
        Needs = "the name of a file",
        With = CommonOptions.Force,
    };

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Netlist.Text,
        Parameters = [RigParameter.Wired],
        Options = [.. QuestionSpecs.Netlist.Options, Out],
        Needs = "the path of one rig file",
        WhyNoJson = "netlist writes a SPICE deck, not JSON.",
        Example = "loadmark netlist examples/pit.rig.yaml --out pit.cir",
        Documentation = "docs/theory/rig-circuit.md",
        AnswersAtOnce = true,
        Run = static input => new NetlistCommand(input).Run(),
    };

    /// <summary>Reads the rig and writes its circuit.</summary>
    private int Run()
    {
        if (input.Words is not [var path])
            return input.Refuse();
        var (complaints, force) = (input.Complaints, input.Has(CommonOptions.Force));
        var outputs = new OutputFiles(input.Process, input.Data);
        var file = input.Text(Out) is var named && named == StandardInput.Mark ? null : named;
        if (file is not null && outputs.Complaint(file, Out.Typed, force, path) is { } complaint)
            return complaints.Unusable(complaint);
        var reading = input.Rigs.Read(path);
        if (reading.Rig is not { } rig)
            return complaints.Unreadable([new CheckAnswer(path, null, reading.Errors)], json: false);

        var circuit = RigCircuit.Of(WiredRig.Of(rig));
        if (circuit.Parts.IsEmpty)
            return complaints.Unusable(
                $"{StandardInput.NameOf(path)} has no wiring that can be computed. Have it planned: loadmark plan {path} --write FILE");

        var deck = RigDeck.Write(circuit, input.Has(QuestionSpecs.Steady));
        if (file is not null)
            return outputs.TrySave(file, deck, force) ? ExitCode.Fine : ExitCode.Unreadable;
        input.Process.Output.Write(Encoding.UTF8.GetBytes(deck));
        input.Process.Output.Flush();
        return ExitCode.Fine;
    }
}
