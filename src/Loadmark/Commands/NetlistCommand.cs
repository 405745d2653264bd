using System.Text;
using Loadmark.Answers;
using Loadmark.Core.Ratings;
using Loadmark.Hosting;
using Loadmark.Outputs;
using Loadmark.Simulation;
using Loadmark.Simulation.Wiring;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary><c>loadmark netlist</c>: the same circuit for any SPICE program.</summary>
internal sealed class NetlistCommand(Surroundings around, IRigSource source)
{
    /// <summary>Reads the rig and writes its circuit.</summary>
    public int Run(Request.Netlist request)
    {
        var complaints = new Complaints(around);
        var outputs = new OutputFiles(around, request.Data);
        var file = request.Out == StandardInput.Mark ? null : request.Out;
        if (file is not null && outputs.Complaint(file, "--out", request.Force, request.Rig) is { } complaint)
            return complaints.Unusable(complaint);
        var reading = source.Read(request.Rig);
        if (reading.Rig is not { } rig)
            return complaints.Unreadable([new CheckAnswer(request.Rig, null, reading.Errors)], json: false);

        var circuit = RigCircuit.Of(WiredRig.Of(rig));
        if (circuit.Parts.IsEmpty)
            return complaints.Unusable($"{StandardInput.NameOf(request.Rig)} has no wiring that can be computed. Have it planned: loadmark plan {request.Rig} --write FILE");

        var deck = RigDeck.Write(circuit, request.Steady);
        if (file is not null)
            return outputs.TrySave(file, deck, request.Force) ? ExitCode.Fine : ExitCode.Unreadable;
        around.Output.Write(Encoding.UTF8.GetBytes(deck));
        around.Output.Flush();
        return ExitCode.Fine;
    }
}
