using Loadmark.Questions;

namespace Loadmark.Api.Requests;

/// <summary>Options that addresses take and commands do not.</summary>
internal static class ApiOptions
{
    /// <summary>The name that the answer carries for the rig's file.</summary>
    public static OptionSpec File { get; } = new(
        "file", OptionKind.Text, "The name of the rig's file, for the answer to carry. Nothing is opened. Left out, it is empty.")
    { Example = "pit.rig.yaml" };

    /// <summary>What a change does.</summary>
    public static OptionSpec What { get; } = new("what", OptionKind.Text, "What the change does, for the list of changes.")
    {
        Example = "measured again",
    };
}
