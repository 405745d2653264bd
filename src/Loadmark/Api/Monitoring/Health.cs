using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Shapes;
using Loadmark.Storage;
using Loadmark.Storage.Faults;

namespace Loadmark.Api.Monitoring;

/// <summary>Whether the program and the rigs' store are well.</summary>
/// <param name="store">The store.</param>
/// <param name="clock">Measures how long the program has been running.</param>
internal sealed class Health(RigStore store, TimeProvider clock)
{
    private readonly long _begin = clock.GetTimestamp();

    /// <summary>What the address takes and answers.</summary>
    public static ApiOperation Operation { get; } = new()
    {
        Name = "health",
        Group = "Health",
        Summary = "Whether the program and the store of rigs are well.",
        About = "Answered with 200 when all is well, and with 503 and the same object when rigs cannot be read or kept.",
        Answers = [ApiContent.Of(HealthJson.Health, "health.json")],
    };

    /// <summary>Answers how the server is.</summary>
    /// <param name="context">The request.</param>
    public async Task<IResult> AnswerAsync(HttpContext context)
    {
        var trouble = await TroubleAsync(context.RequestAborted);
        context.Response.Headers.CacheControl = "no-store";
        context.Response.StatusCode = trouble is null ? StatusCodes.Status200OK : StatusCodes.Status503ServiceUnavailable;
        var uptime = Math.Round((decimal)clock.GetElapsedTime(_begin).TotalSeconds, 3);
        return TypedResults.Bytes(
            AnswerBytes.Of(output => JsonFormat.WriteLine(output, HealthJson.Health, new HealthReport(uptime, trouble))), ApiContent.Json);
    }

    /// <summary>What is wrong with the store, in words; null where nothing is. Asked of the store itself each time.</summary>
    private async Task<string?> TroubleAsync(CancellationToken cancellation)
    {
        try
        {
            await store.FindAsync(Guid.Empty, cancellation);
            return null;
        }
        catch (StorageException fault)
        {
            return fault.Message;
        }
    }
}
