using System.Text;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Core.Ratings;
using Loadmark.Simulation;
using Loadmark.Simulation.Wiring;
using Loadmark.Questions;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Questions;

/// <summary>The same circuit for any SPICE program.</summary>
internal sealed class NetlistQuestion : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = ApiOperation.OnRig(
        QuestionSpecs.Netlist, ApiContent.Text(ApiContent.Plain, "A SPICE deck.", "netlist.txt")) with
    {
        Streams = false,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store, ProblemKind.NoWiring],
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (request.ReadRig(out var refusal) is not { } rig)
            return refusal;
        var circuit = RigCircuit.Of(WiredRig.Of(rig));
        if (circuit.Parts.IsEmpty)
            return new Problem(ProblemKind.NoWiring, "The rig has no wiring that can be computed. Have it planned.");
        var steady = request.Options.Has(QuestionSpecs.Steady);
        return new Computation((_, _) => Encoding.UTF8.GetBytes(RigDeck.Write(circuit, steady)));
    }
}
