namespace Loadmark.Sheets;

/// <summary>What a page of help, or a complaint, is about.</summary>
internal enum Topic
{
    /// <summary>The program as a whole.</summary>
    Program,

    /// <summary>The check command.</summary>
    Check,

    /// <summary>The read command.</summary>
    Read,

    /// <summary>The plan command.</summary>
    Plan,

    /// <summary>The buy command.</summary>
    Buy,

    /// <summary>The settle command.</summary>
    Settle,

    /// <summary>The startup command.</summary>
    StartUp,

    /// <summary>The netlist command.</summary>
    Netlist,

    /// <summary>The backup command.</summary>
    Backup,

    /// <summary>The restore command.</summary>
    Restore,

    /// <summary>The commands about the gear library.</summary>
    Gear,

    /// <summary>The commands about the rigs that are kept.</summary>
    Rigs,
}
