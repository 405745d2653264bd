using System.Buffers;
using System.Text;
using System.Text.Json;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Objective;
using Loadmark.Shapes;
using Loadmark.Simulation.Spreading;
using Loadmark.Workshop.Library;

namespace Loadmark.Api.Execution;

/// <summary>How far a computation has come: the last that it told.</summary>
internal sealed class SolveProgress
    : IProgress<PlanProgress>, IProgress<BuyProgress>, IProgress<SpreadProgress>, IProgress<AffectedProgress>
{
    private volatile object? _last;

    /// <summary>The last that was told; null before anything was. Another object each time.</summary>
    public object? Last => _last;

    /// <inheritdoc/>
    public void Report(PlanProgress value) => _last = value;

    /// <inheritdoc/>
    public void Report(BuyProgress value) => _last = value;

    /// <inheritdoc/>
    public void Report(SpreadProgress value) => _last = value;

    /// <inheritdoc/>
    public void Report(AffectedProgress value) => _last = value;

    /// <summary>The last progress as an object of JSON.</summary>
    /// <param name="elapsed">The time since it was asked for.</param>
    public string Write(TimeSpan elapsed)
    {
        var output = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(output, JsonFormat.Options))
            ProgressJson.Progress.Write(json, new ReportedProgress(elapsed, _last));

        return Encoding.UTF8.GetString(output.WrittenSpan);
    }
}
